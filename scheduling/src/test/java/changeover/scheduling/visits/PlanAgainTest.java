package changeover.scheduling.visits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.catalogue.LongestVisit;
import changeover.contracts.catalogue.SeasonRules;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** A plan depends on what is promised and on nothing else, and planning again over a plan changes nothing. */
class PlanAgainTest {

    private static final List<LongestVisit> BOUNDS =
            List.of(LongestVisit.ANY, new LongestVisit(45), new LongestVisit(90), new LongestVisit(150));

    private interface Check {
        void on(
                List<Promise> promises,
                List<Pin> pins,
                int sold,
                SeasonRules rules,
                LongestVisit longest,
                Random random);
    }

    private static void each(int usual, Check check) {
        SmallYears.each(usual, 16, (promises, random) -> {
            List<Pin> pins = SmallYears.pins(random);
            check.on(
                    promises,
                    pins,
                    pins.size() + random.nextInt(6),
                    random.nextBoolean() ? SeasonRules.USUAL : SmallYears.NO_SEASONS,
                    BOUNDS.get(random.nextInt(BOUNDS.size())),
                    random);
        });
    }

    @Test
    void theOrderOfTheQuestionDecidesNothing() {
        each(2_000, (promises, pins, sold, rules, longest, random) -> {
            VisitPlan plan = VisitPlan.of(promises, sold, SmallYears.TERM, pins, rules, longest);
            List<Promise> shuffled = new ArrayList<>(promises);
            List<Pin> others = new ArrayList<>(pins);
            Collections.shuffle(shuffled, random);
            Collections.shuffle(others, random);
            VisitPlan again = VisitPlan.of(shuffled, sold, SmallYears.TERM, others, rules, longest);
            assertEquals(visits(plan), visits(again));
            assertEquals(plan.unkept(), again.unkept());
            assertEquals(plan.household(), again.household());
            assertEquals(plan.proof(), again.proof());
        });
    }

    @Test
    void visitsThatGotTheirDayKeepTheirWorkWhenTheYearIsPlannedAgain() {
        each(2_000, (promises, pins, sold, rules, longest, random) -> {
            VisitPlan plan = VisitPlan.of(promises, sold, SmallYears.TERM, pins, rules, longest);
            List<Pin> all = new ArrayList<>();
            for (PlannedVisit visit : plan.visits()) {
                LocalDate day = visit.window().from().plusDays(random.nextInt((int)
                        visit.window().days()));
                boolean taking =
                        pins.stream().noneMatch(pin -> pin.visitId().equals(visit.pinned()) && !pin.takesMore());
                UUID id = visit.pinned() == null ? new UUID(9, all.size()) : visit.pinned();
                all.add(new Pin(id, day, taking, visit.tasks()));
            }
            List<Promise> open = new ArrayList<>(plan.household());
            plan.unkept().forEach(one -> open.add(one.promise()));
            Collections.shuffle(all, random);
            VisitPlan again = VisitPlan.of(open, sold, SmallYears.TERM, all, rules, longest);
            assertEquals(plan.visits().size(), again.visits().size());
            for (PlannedVisit visit : again.visits()) {
                Pin pin = all.stream()
                        .filter(one -> one.visitId().equals(visit.pinned()))
                        .findFirst()
                        .orElseThrow();
                assertEquals(pin.day(), visit.window().from());
                assertEquals(pin.holds(), visit.tasks());
            }
            assertEquals(BoundedVisitsTest.counted(promisesOf(plan)), BoundedVisitsTest.counted(promisesOf(again)));
        });
    }

    @Test
    void aYearUnderWayIntoWhichNothingComesStandsAsItStood() {
        each(2_000, (promises, pins, sold, rules, longest, random) -> {
            VisitPlan plan = VisitPlan.of(promises, sold, SmallYears.TERM, List.of(), rules, longest);
            LocalDate today = SmallYears.FIRST.plusDays(random.nextInt(SmallYears.HORIZON));
            List<StandingVisit> standing = new ArrayList<>();
            for (PlannedVisit visit : plan.visits()) {
                boolean given = random.nextInt(3) == 0;
                standing.add(new StandingVisit(
                        new UUID(9, standing.size()),
                        visit.window(),
                        given ? visit.window().from() : null,
                        given && random.nextBoolean(),
                        visit.tasks().stream()
                                .map(task -> new StandingVisit.StandingTask(UUID.randomUUID(), task, false))
                                .toList()));
            }
            LongestVisit changed = BOUNDS.get(random.nextInt(BOUNDS.size()));
            YearAgain again = YearAgain.of(
                    SmallYears.TERM,
                    sold,
                    standing,
                    PromisesLeft.of(SmallYears.TERM, List.of(), rules, today),
                    rules,
                    changed,
                    today);
            assertTrue(again.unkept().isEmpty());
            for (YearAgain.Kept kept : again.visits()) {
                StandingVisit stood = kept.stood();
                if (stood != null && !stood.tasks().isEmpty()) {
                    assertEquals(
                            stood.tasks().stream()
                                    .map(StandingVisit.StandingTask::promise)
                                    .toList(),
                            kept.visit().tasks());
                    assertEquals(stood.id(), kept.visit().pinned());
                } else {
                    assertTrue(kept.visit().tasks().isEmpty());
                }
            }
        });
    }

    private static Map<Object, Integer> visits(VisitPlan plan) {
        Map<Object, Integer> visits = new HashMap<>();
        plan.visits()
                .forEach(visit -> visits.merge(
                        List.of(
                                String.valueOf(visit.pinned()),
                                visit.window(),
                                BoundedVisitsTest.counted(visit.tasks())),
                        1,
                        Integer::sum));
        return visits;
    }

    private static List<Promise> promisesOf(VisitPlan plan) {
        return plan.unkept().stream().map(Unkept::promise).toList();
    }
}
