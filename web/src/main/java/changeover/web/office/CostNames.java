package changeover.web.office;

import changeover.billing.pricing.Cause;

/** What the causes of a cost are called in a drawing. */
final class CostNames {

    private CostNames() {}

    static String of(Cause cause, boolean french) {
        return switch (cause) {
            case TASKS -> french ? "Travail aux tâches" : "Work on tasks";
            case SET_UP -> french ? "Mise en place" : "Set-up";
            case TRAVEL -> french ? "Route" : "Road";
            case PARTS -> french ? "Pièces" : "Parts";
            case READY -> french ? "Minutes comprises" : "Minutes given";
            case OVERHEAD -> french ? "Frais généraux" : "Overhead";
        };
    }
}
