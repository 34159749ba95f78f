package changeover.scheduling.visits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.calendar.Term;
import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.LongestVisit;
import changeover.contracts.catalogue.SeasonRules;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;

class VisitPlanTest {

    private static final LocalDate FIRST = SmallYears.FIRST;
    private static final SeasonRules NO_SEASONS = SmallYears.NO_SEASONS;
    private static final int HORIZON = SmallYears.HORIZON;

    private final Term term = Term.ofYear(FIRST);

    @Test
    void asManyVisitsAsBruteForceFindsAndNoPromiseLost() {
        SmallYears.each(8_000, 7, (promises, random) -> {
            VisitPlan plan = plan(promises, HORIZON, List.of(), NO_SEASONS);
            assertSound(plan, promises);
            long withTasks = plan.visits().stream()
                    .filter(visit -> !visit.tasks().isEmpty())
                    .count();
            assertTrue(plan.unkept().isEmpty());
            assertTrue(withTasks >= fewest(promises));
            VisitPlan exact = plan(promises, fewest(promises), List.of(), NO_SEASONS);
            assertSound(exact, promises);
            assertTrue(exact.unkept().isEmpty());
            assertEquals(fewest(promises), exact.visits().size());
        });
    }

    @Test
    void withTooFewVisitsNoOtherChoiceOfDaysKeepsMore() {
        SmallYears.each(8_000, 7, (promises, random) -> {
            int sold = random.nextInt(Math.max(1, fewest(promises)));
            VisitPlan plan = plan(promises, sold, List.of(), NO_SEASONS);
            assertSound(plan, promises);
            assertEquals(sold, plan.visits().size());
            assertEquals(most(promises, sold), promises.size() - plan.unkept().size());
        });
    }

    @Test
    void visitsWithADayNeverMoveAndAreUsedFirst() {
        SmallYears.each(4_000, 7, (promises, random) -> {
            List<Pin> pins = new ArrayList<>();
            for (int pin = 0; pin < random.nextInt(3); pin++) {
                pins.add(new Pin(
                        new UUID(7, pin), FIRST.plusDays(random.nextInt(HORIZON)), random.nextBoolean(), List.of()));
            }
            VisitPlan plan = plan(promises, HORIZON + 3, pins, NO_SEASONS);
            assertSound(plan, promises);
            for (Pin pin : pins) {
                PlannedVisit stands = plan.visits().stream()
                        .filter(visit -> visit.pinnedVisit().equals(java.util.Optional.of(pin.visitId())))
                        .findFirst()
                        .orElseThrow();
                assertEquals(Window.ofDay(pin.day()), stands.window());
                assertTrue(pin.takesMore() || stands.tasks().isEmpty());
            }
            List<Promise> open = promises.stream()
                    .filter(promise -> pins.stream()
                            .noneMatch(
                                    pin -> pin.takesMore() && promise.window().contains(pin.day())))
                    .toList();
            VisitPlan exact = plan(promises, pins.size() + fewest(open), pins, NO_SEASONS);
            assertTrue(exact.unkept().isEmpty());
            assertEquals(pins.size() + fewest(open), exact.visits().size());
        });
    }

    @Test
    void theSameQuestionGivesTheSameAnswer() {
        SmallYears.each(
                500,
                7,
                (promises, random) -> assertEquals(
                        plan(promises, 4, List.of(), SeasonRules.USUAL),
                        plan(promises, 4, List.of(), SeasonRules.USUAL)));
    }

    /** Visits as long as their work. */
    private VisitPlan plan(List<Promise> promises, int sold, List<Pin> pins, SeasonRules rules) {
        return VisitPlan.of(promises, sold, term, pins, rules, LongestVisit.ANY);
    }

    /** Every promise is at one visit or named as not kept; a visit has a day, and on each of its days keeps all its tasks. */
    private static void assertSound(VisitPlan plan, List<Promise> promises) {
        List<Promise> placed = new ArrayList<>();
        for (PlannedVisit visit : plan.visits()) {
            placed.addAll(visit.tasks());
            visit.tasks()
                    .forEach(task -> assertEquals(
                            visit.window(), visit.window().common(task.window()).orElseThrow()));
        }
        plan.unkept().forEach(unkept -> placed.add(unkept.promise()));
        assertEquals(promises.size(), placed.size());
        assertEquals(Set.copyOf(promises), new HashSet<>(placed));
    }

    private static int fewest(List<Promise> promises) {
        for (int visits = 0; ; visits++) {
            if (most(promises, visits) == promises.size()) {
                return visits;
            }
        }
    }

    /** Tries every set of days. */
    private static int most(List<Promise> promises, int visits) {
        int most = 0;
        int[] touchedOn = new int[HORIZON];
        for (int day = 0; day < HORIZON; day++) {
            for (int number = 0; number < promises.size(); number++) {
                if (promises.get(number).window().contains(FIRST.plusDays(day))) {
                    touchedOn[day] |= 1 << number;
                }
            }
        }
        for (int days = 0; days < 1 << HORIZON; days++) {
            if (Integer.bitCount(days) <= visits) {
                int touched = 0;
                for (int day = 0; day < HORIZON; day++) {
                    if ((days >> day & 1) == 1) {
                        touched |= touchedOn[day];
                    }
                }
                most = Math.max(most, Integer.bitCount(touched));
            }
        }
        return most;
    }
}
