package changeover.scheduling.visits;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/**
 * An agreement's year as the rule lays it out. The plan knows the home's machines by their place in the list only, so
 * that homes with the same machines, promises and past share one plan.
 *
 * @param units the machines, in the order in which the plan counts them
 */
record PlannedYear(YearToPlan of, VisitPlan plan, List<UUID> units) {

    UUID unit(Promise promise) {
        return unit(promise.equipmentId());
    }

    /** The machine itself, by its name inside the plan. */
    UUID unit(UUID standIn) {
        return units.get(place(standIn));
    }

    /** The machines of a year with their names inside its plan, in the order of its tasks. */
    static Map<UUID, UUID> standIns(YearToPlan year) {
        Map<UUID, UUID> standIns = new LinkedHashMap<>();
        for (PromisedTask task : year.tasks()) {
            standIns.computeIfAbsent(task.equipmentId(), _ -> standIn(standIns.size()));
        }
        return standIns;
    }

    /** The name of a machine inside a plan. */
    static UUID standIn(int place) {
        return new UUID(0, place);
    }

    private static int place(UUID standIn) {
        return (int) standIn.getLeastSignificantBits();
    }
}
