package changeover.scheduling.visits;

import changeover.contracts.calendar.DayInWords;
import changeover.contracts.calendar.Term;
import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.SeasonRules;
import changeover.contracts.catalogue.Who;
import changeover.contracts.words.Wording;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A home's year in the fewest visits that keep every promise: never fewer than the plan sells, never more; what would
 * need more is named as not kept. Visits that have their day already never move and are used first.
 *
 * @param visits in order of their windows; the pinned ones among them
 * @param unkept what the sold visits cannot keep
 * @param household the household's own tasks, by the day they are told
 */
public record VisitPlan(List<PlannedVisit> visits, List<Unkept> unkept, List<Promise> household) {

    private static final Wording ONE_MORE = new Wording(
            "It would take one more visit than the plan sells, between %s and %s.",
            "Il faudrait une visite de plus que la formule n’en vend, entre le %s et le %s.");

    public VisitPlan {
        visits = List.copyOf(visits);
        unkept = List.copyOf(unkept);
        household = List.copyOf(household);
    }

    /**
     * @param promises of all equipment of the home, the household's among them
     * @param sold visits that the plan sells for the term, pinned ones included
     * @param rules whose changeovers get the visits that nothing else asks for
     */
    public static VisitPlan of(List<Promise> promises, int sold, Term term, List<Pin> pins, SeasonRules rules) {
        List<Promise> household = promises.stream()
                .filter(promise -> promise.who() == Who.HOUSEHOLD)
                .sorted(Comparator.comparing((Promise promise) -> promise.due().on()))
                .toList();
        List<VisitDraft> drafts =
                new ArrayList<>(pins.stream().map(VisitDraft::pinned).toList());
        List<Owed> open = new ArrayList<>();
        for (int place = 0; place < promises.size(); place++) {
            if (promises.get(place).who() == Who.TECHNICIAN) {
                Owed owed = new Owed(place, promises.get(place));
                drafts.stream()
                        .filter(draft -> draft.canTake(owed))
                        .findFirst()
                        .ifPresentOrElse(draft -> draft.add(owed), () -> open.add(owed));
            }
        }
        List<Unkept> unkept = spread(open, Math.max(0, sold - pins.size()), drafts);
        if (drafts.size() < sold) {
            drafts = ExtraVisits.added(drafts, sold, term, rules);
        }
        FitTasks.settle(drafts);
        List<PlannedVisit> visits = drafts.stream()
                .map(VisitDraft::planned)
                .sorted(Comparator.comparing(
                                (PlannedVisit visit) -> visit.window().from())
                        .thenComparing(PlannedVisit::window))
                .toList();
        return new VisitPlan(visits, unkept, household);
    }

    /** Makes the visits for what no pinned visit keeps; gives back what is left over. */
    private static List<Unkept> spread(List<Owed> open, int atMost, List<VisitDraft> drafts) {
        List<LocalDate> days =
                FewestVisits.touchingMost(open.stream().map(Owed::window).toList(), atMost);
        List<VisitDraft> made = new ArrayList<>();
        List<Unkept> unkept = new ArrayList<>();
        for (LocalDate day : days) {
            made.add(VisitDraft.in(ExtraVisits.ALWAYS));
        }
        for (Owed owed : open) {
            int first = firstIn(owed.window(), days);
            if (first < 0) {
                unkept.add(new Unkept(owed.promise(), why(owed.window())));
            } else {
                made.get(first).add(owed);
            }
        }
        drafts.addAll(made);
        return unkept;
    }

    private static int firstIn(Window window, List<LocalDate> days) {
        for (int index = 0; index < days.size(); index++) {
            if (window.contains(days.get(index))) {
                return index;
            }
        }
        return -1;
    }

    private static Wording why(Window window) {
        Wording from = DayInWords.of(window.from());
        Wording last = DayInWords.of(window.last());
        return new Wording(
                ONE_MORE.en().formatted(from.en(), last.en()), ONE_MORE.fr().formatted(from.fr(), last.fr()));
    }
}
