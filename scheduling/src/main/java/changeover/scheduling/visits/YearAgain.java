package changeover.scheduling.visits;

import changeover.contracts.calendar.Term;
import changeover.contracts.catalogue.LongestVisit;
import changeover.contracts.catalogue.SeasonRules;
import changeover.contracts.customers.ShutTimes;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A year under way is laid out again when machines come into it or work falls due on other days: visits that were made or have their day stay where they
 * are, the others take what is owed, in no more visits than were sold and never fewer. What was promised before is never
 * pushed out; as much of the new as can be is kept, and of what keeps as much, that which moves the fewest visits.
 *
 * @param visits those that are to come and may change, with what each holds from now on
 */
record YearAgain(List<Kept> visits, List<Unkept> unkept, List<Promise> household) {

    /**
     * A visit as it is to be.
     *
     * @param stood the visit whose place it takes; null for a new one
     */
    record Kept(@Nullable StandingVisit stood, PlannedVisit visit) {}

    /** Which visits without a day may move: none, those without work, all. */
    private static final List<Predicate<StandingVisit>> MOVING =
            List.of(_ -> false, visit -> visit.tasks().isEmpty(), _ -> true);

    private record Laid(List<StandingVisit> free, VisitPlan plan) {}

    YearAgain {
        visits = List.copyOf(visits);
        unkept = List.copyOf(unkept);
        household = List.copyOf(household);
    }

    /** @param left what comes into the year */
    static YearAgain of(
            Term term,
            int sold,
            List<StandingVisit> standing,
            PromisesLeft left,
            SeasonRules rules,
            LongestVisit longest,
            LocalDate day) {
        return of(term, sold, standing, left, MOVING, rules, longest, day);
    }

    /** The same for a home that is shut for some time. */
    static YearAgain of(
            YearToPlan year,
            int sold,
            List<StandingVisit> standing,
            PromisesLeft left,
            SeasonRules rules,
            LongestVisit longest,
            LocalDate day) {
        return OpenDays.laid(
                        left.ahead(),
                        year.shut(),
                        owed -> of(
                                year.term(),
                                sold,
                                standing,
                                new PromisesLeft(owed, left.passed()),
                                rules,
                                longest,
                                day),
                        again -> again.unkept().size())
                .whileOpen(year.shut());
    }

    /** Visits that are laid out anew keep to the days on which the home is open. */
    YearAgain whileOpen(ShutTimes shut) {
        return new YearAgain(
                visits.stream()
                        .map(kept -> new Kept(kept.stood(), kept.visit().whileOpen(shut)))
                        .toList(),
                unkept,
                household);
    }

    /** Visits whose work falls due on other days are laid anew with it; the others only where that keeps more. */
    static YearAgain of(Term term, int sold, Recount recount, SeasonRules rules, LongestVisit longest, LocalDate day) {
        return of(
                term,
                sold,
                recount.standing(),
                new PromisesLeft(recount.owed(), List.of()),
                List.of(
                        visit -> recount.visits().contains(visit.id()),
                        visit -> visit.tasks().isEmpty() || recount.visits().contains(visit.id()),
                        _ -> true),
                rules,
                longest,
                day);
    }

    private static YearAgain of(
            Term term,
            int sold,
            List<StandingVisit> standing,
            PromisesLeft left,
            List<Predicate<StandingVisit>> moving,
            SeasonRules rules,
            LongestVisit longest,
            LocalDate day) {
        Map<Promise, UUID> rows = StandingVisit.rows(standing);
        Laid best = null;
        for (Predicate<StandingVisit> moves : moving) {
            List<StandingVisit> free = standing.stream()
                    .filter(visit -> visit.isFree(day) && (moves.test(visit) || visit.isOver(day)))
                    .toList();
            VisitPlan plan = plan(standing, free, left, sold, PromisesLeft.rest(term, day), rules, longest, day);
            boolean pushesOut = plan.unkept().stream().anyMatch(one -> rows.containsKey(one.promise()));
            if (!pushesOut
                    && (best == null
                            || plan.unkept().size() < best.plan.unkept().size())) {
                best = new Laid(free, plan);
            }
        }
        Laid laid = Objects.requireNonNull(best, "visits that stand push nothing out");
        List<Unkept> unkept = new ArrayList<>(left.passed());
        unkept.addAll(laid.plan.unkept());
        return new YearAgain(kept(laid.plan, standing, laid.free, day), unkept, laid.plan.household());
    }

    private static VisitPlan plan(
            List<StandingVisit> standing,
            List<StandingVisit> free,
            PromisesLeft left,
            int sold,
            Term rest,
            SeasonRules rules,
            LongestVisit longest,
            LocalDate day) {
        List<Pin> pins = standing.stream()
                .filter(visit -> !free.contains(visit))
                .map(visit -> visit.pinned(day))
                .toList();
        List<Promise> promises = new ArrayList<>();
        free.forEach(visit -> visit.tasks().forEach(task -> promises.add(task.promise())));
        promises.addAll(left.ahead());
        return VisitPlan.of(promises, Math.max(sold, standing.size()), rest, pins, rules, longest);
    }

    /** Visits laid out anew take the places of the free ones in the order of their days; what is over is left out. */
    private static List<Kept> kept(
            VisitPlan plan, List<StandingVisit> standing, List<StandingVisit> free, LocalDate day) {
        Map<UUID, StandingVisit> known =
                standing.stream().collect(Collectors.toMap(StandingVisit::id, Function.identity()));
        Iterator<StandingVisit> places = free.stream()
                .sorted(Comparator.comparing(StandingVisit::window))
                .iterator();
        List<Kept> kept = new ArrayList<>();
        for (PlannedVisit visit : plan.visits()) {
            UUID pinned = visit.pinned();
            if (pinned == null) {
                kept.add(new Kept(places.hasNext() ? places.next() : null, visit));
            } else {
                StandingVisit stood = Objects.requireNonNull(known.get(pinned));
                if (stood.pinned(day).takesMore()) {
                    kept.add(new Kept(stood, visit));
                }
            }
        }
        return kept;
    }
}
