package changeover.contracts.catalogue;

import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/**
 * The months that a machine's own label names outrank the catalogue for what the household does to the part that fits
 * it: a filter of twelve months is changed after twelve.
 */
public final class LabelInterval {

    /** The fact that holds the label's months. */
    public static final String LABEL_MONTHS = "label-months";

    public static final String BASIS = "label on the machine";

    private LabelInterval() {}

    /** Empty where the label says nothing, no whole number of 1 to 60 months, or nothing about this task. */
    public static Optional<Interval> of(Task task, UUID equipmentId, Map<String, String> fits, Catalogue catalogue) {
        String said = fits.getOrDefault(LABEL_MONTHS, "").strip();
        if (!said.matches("[1-9]\\d?") || Integer.parseInt(said) > 60 || !usesTheFittingPart(task, catalogue)) {
            return Optional.empty();
        }
        int months = Integer.parseInt(said);
        Cadence labelled = switch (task.cadence()) {
            case Cadence.CheckThenReplace(int check, int _) ->
                new Cadence.CheckThenReplace(Math.min(check, months), months);
            case Cadence.EveryMonths(int _, int min, int _) ->
                new Cadence.EveryMonths(months, Math.min(min, months), months);
            case Cadence.BeforeSeason _,
                    Cadence.EachSeason _,
                    Cadence.TimesAYear _,
                    Cadence.LookThenChange _,
                    Cadence.OnRequest _ -> task.cadence();
        };
        return labelled.equals(task.cadence())
                ? Optional.empty()
                : Optional.of(new Interval(task.code(), equipmentId, labelled, BASIS, null));
    }

    private static boolean usesTheFittingPart(Task task, Catalogue catalogue) {
        return task.who() == Who.HOUSEHOLD
                && task.parts().stream()
                        .flatMap(use -> catalogue.findPart(use.part()).stream())
                        .anyMatch(part -> part.fits() != null);
    }
}
