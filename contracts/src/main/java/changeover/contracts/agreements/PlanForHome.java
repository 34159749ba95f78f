package changeover.contracts.agreements;

import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.Interval;
import changeover.contracts.catalogue.LabelInterval;
import changeover.contracts.catalogue.Task;
import changeover.contracts.plans.PlanFacts;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/**
 * What a plan promises in one home: each of its tasks for every machine that the task is for. How often: as the label of
 * the one machine says, else the plan, else the business's own interval, else the catalogue.
 */
public final class PlanForHome {

    static final String PLAN = "your plan";

    private PlanForHome() {}

    /** A machine of the home as the catalogue sees it. */
    public record Unit(UUID id, String kind, Map<String, String> fits) {

        public Unit {
            fits = Map.copyOf(fits);
        }
    }

    /** By machine, and for each in the order of the plan; a task that the catalogue does not know promises nothing. */
    public static List<Offer.Promised> promises(
            PlanFacts plan, List<Unit> units, Catalogue catalogue, Collection<Interval> intervals) {
        return promises(plan.tasks(), units, catalogue, intervals);
    }

    /** The same by a plan's tasks alone, as they were sold. */
    static List<Offer.Promised> promises(
            List<PlanFacts.Promise> tasks, List<Unit> units, Catalogue catalogue, Collection<Interval> intervals) {
        var promised = new ArrayList<Offer.Promised>();
        for (Unit unit : units) {
            for (PlanFacts.Promise promise : tasks) {
                catalogue
                        .findTask(promise.taskCode())
                        .filter(task -> task.isFor(unit.kind(), unit.fits()))
                        .map(task -> asPromised(task, promise, unit, intervals, catalogue))
                        .ifPresent(task -> promised.add(new Offer.Promised(
                                unit.id(), task.code(), task.cadence(), task.who(), task.minutes(), task.basis())));
            }
        }
        return List.copyOf(promised);
    }

    private static Task asPromised(
            Task task, PlanFacts.Promise promise, Unit unit, Collection<Interval> intervals, Catalogue catalogue) {
        boolean ownInterval = intervals.stream()
                .anyMatch(interval ->
                        interval.taskCode().equals(task.code()) && unit.id().equals(interval.equipmentId()));
        if (ownInterval) {
            return Interval.over(task, unit.id(), intervals);
        }
        Optional<Interval> label = LabelInterval.of(task, unit.id(), unit.fits(), catalogue);
        if (label.isPresent()) {
            return Interval.over(task, unit.id(), List.of(label.get()));
        }
        return promise.cadence() == null
                ? Interval.over(task, unit.id(), intervals)
                : task.withCadence(promise.cadence(), PLAN, null);
    }
}
