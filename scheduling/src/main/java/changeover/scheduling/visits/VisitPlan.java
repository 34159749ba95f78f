package changeover.scheduling.visits;

import changeover.contracts.calendar.Term;
import changeover.contracts.catalogue.LongestVisit;
import changeover.contracts.catalogue.SeasonRules;
import changeover.contracts.catalogue.Who;
import changeover.contracts.customers.ShutTimes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A home's year in the fewest visits that keep every promise: never fewer than the plan sells, never more; what would
 * need more is named as not kept. Visits that have their day already never move and are used first. In which order the
 * promises come decides nothing but the order of a visit's lines.
 *
 * @param visits in order of their windows; the pinned ones among them
 * @param unkept what the sold visits cannot keep
 * @param household the household's own tasks, by the day they are told
 * @param proof whether fewer visits would do, or more could be kept
 */
public record VisitPlan(List<PlannedVisit> visits, List<Unkept> unkept, List<Promise> household, Proof proof) {

    public VisitPlan {
        visits = List.copyOf(visits);
        unkept = List.copyOf(unkept);
        household = List.copyOf(household);
    }

    /**
     * @param promises of all equipment of the home, the household's among them; without those that pins hold
     * @param sold visits that the plan sells for the term, pinned ones included
     * @param rules whose changeovers get the visits that nothing else asks for
     */
    public static VisitPlan of(
            List<Promise> promises, int sold, Term term, List<Pin> pins, SeasonRules rules, LongestVisit longest) {
        List<VisitDraft> drafts = new ArrayList<>(pins.stream()
                .sorted(Pin.BY_DAY)
                .map(pin -> VisitDraft.pinned(pin, longest))
                .toList());
        Packed packed =
                new Packing(Owed.byTechnicians(promises), drafts, Math.max(0, sold - pins.size()), longest).packed();
        for (int pin = 0; pin < pins.size(); pin++) {
            packed.toPins().get(pin).forEach(drafts.get(pin)::add);
        }
        for (List<Owed> tasks : packed.made()) {
            VisitDraft draft = VisitDraft.in(ExtraVisits.ALWAYS, longest);
            tasks.forEach(draft::add);
            drafts.add(draft);
        }
        if (drafts.size() < sold) {
            drafts = ExtraVisits.added(drafts, sold, term, rules, longest);
        }
        FitTasks.settle(drafts);
        List<Owed> left = added(packed.left(), drafts);
        return new VisitPlan(
                drafts.stream()
                        .map(VisitDraft::planned)
                        .sorted(Comparator.comparing(
                                        (PlannedVisit visit) -> visit.window().from())
                                .thenComparing(PlannedVisit::window))
                        .toList(),
                Unkept.of(left, drafts, longest),
                household(promises),
                packed.proof());
    }

    /** The same for a home that is shut for some time, no visit of which has its day yet. */
    static VisitPlan of(
            List<Promise> promises, ShutTimes shut, int sold, Term term, SeasonRules rules, LongestVisit longest) {
        VisitPlan plan = OpenDays.laid(
                promises,
                shut,
                owed -> of(owed, sold, term, List.of(), rules, longest),
                laid -> laid.unkept().size());
        return new VisitPlan(
                plan.visits.stream().map(visit -> visit.whileOpen(shut)).toList(),
                plan.unkept,
                plan.household,
                plan.proof);
    }

    /** What was left over goes where there is room for it after all; gives back the rest. */
    private static List<Owed> added(List<Owed> left, List<VisitDraft> drafts) {
        List<Owed> rest = new ArrayList<>();
        for (Owed task : left) {
            drafts.stream()
                    .filter(draft -> draft.canTake(task))
                    .findFirst()
                    .ifPresentOrElse(draft -> draft.add(task), () -> rest.add(task));
        }
        return rest;
    }

    private static List<Promise> household(List<Promise> promises) {
        return promises.stream()
                .filter(promise -> promise.who() == Who.HOUSEHOLD)
                .sorted(Comparator.comparing((Promise promise) -> promise.due().on())
                        .thenComparing(Promise::byDeadline))
                .toList();
    }
}
