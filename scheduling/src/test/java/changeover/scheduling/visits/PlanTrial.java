package changeover.scheduling.visits;

import changeover.contracts.calendar.Term;
import changeover.contracts.catalogue.Due;
import changeover.contracts.catalogue.History;
import changeover.contracts.catalogue.LongestVisit;
import changeover.contracts.catalogue.SeasonRules;
import changeover.contracts.catalogue.Task;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Does a plan keep its promises with so many visits for this equipment, and if not, what is missing; and what a year of
 * it takes. Nothing is known of the past: every interval counts from the first day of the term.
 *
 * @param needed the fewest visits that keep every promise
 * @param visits the year as it would be laid out
 * @param technicianMinutes planning minutes on site of what is kept
 * @param householdMinutes planning minutes of the household's own tasks
 * @param parts quantity a year by kind of part, of what is used each time
 */
public record PlanTrial(
        VisitsNeeded needed,
        VisitPlan visits,
        int technicianMinutes,
        int householdMinutes,
        Map<String, BigDecimal> parts) {

    /**
     * @param tasks of the plan, with the cadences it promises; a task that no machine asks for is left out
     * @param sold visits a term
     */
    public static PlanTrial of(
            List<Task> tasks, List<Machine> machines, int sold, Term term, SeasonRules rules, LongestVisit longest) {
        List<PromisedTask> promised = new ArrayList<>();
        for (Machine machine : machines) {
            tasks.stream()
                    .filter(task -> task.isFor(machine.kind(), machine.fits()))
                    .forEach(task -> promised.add(PromisedTask.of(machine.id(), task, History.NONE)));
        }
        List<Promise> promises = Promises.in(term, promised, rules);
        VisitPlan plan = VisitPlan.of(promises, sold, term, List.of(), rules, longest);
        List<Promise> kept =
                plan.visits().stream().flatMap(visit -> visit.tasks().stream()).toList();
        return new PlanTrial(
                VisitsNeeded.of(promises, longest),
                plan,
                minutes(kept),
                minutes(plan.household()),
                parts(kept, plan.household(), tasks));
    }

    public int visitsNeeded() {
        return needed.visits();
    }

    public boolean keepsItsPromises() {
        return visits.unkept().isEmpty();
    }

    public List<Unkept> missing() {
        return visits.unkept();
    }

    private static int minutes(List<Promise> promises) {
        return promises.stream().mapToInt(Promise::minutes).sum();
    }

    /** Looking uses nothing up: only doing and replacing do. */
    private static Map<String, BigDecimal> parts(List<Promise> kept, List<Promise> household, List<Task> tasks) {
        Map<String, BigDecimal> parts = new TreeMap<>(Comparator.naturalOrder());
        for (List<Promise> promises : List.of(kept, household)) {
            for (Promise promise : promises) {
                if (promise.due().act() != Due.Act.CHECK) {
                    tasks.stream()
                            .filter(task -> task.code().equals(promise.taskCode()))
                            .flatMap(task -> task.parts().stream())
                            .filter(Task.PartUse::eachTime)
                            .forEach(use -> parts.merge(use.part(), use.quantity(), BigDecimal::add));
                }
            }
        }
        return parts;
    }
}
