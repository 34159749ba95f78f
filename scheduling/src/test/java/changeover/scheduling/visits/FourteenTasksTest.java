package changeover.scheduling.visits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.catalogue.LongestVisit;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Homes with many tasks and visits that may last so many minutes, beside an answer that is found in another way. */
class FourteenTasksTest {

    private static final int MORE_IN_THE_FULL_RUN = Boolean.getBoolean("changeover.deep") ? 20 : 1;

    /** One home as its seed tells it. */
    private record Case(List<Promise> promises, List<Pin> pins, int more, LongestVisit longest) {

        static Case of(int seed, int fewest, int most) {
            var random = new Random(seed);
            List<Promise> promises = SmallYears.promises(fewest + random.nextInt(most - fewest + 1), random);
            return new Case(
                    promises,
                    SmallYears.pins(random),
                    random.nextInt(3) == 0 ? random.nextInt(5) : promises.size(),
                    new LongestVisit(60 + 5 * random.nextInt(25)));
        }

        EveryWay.Best best() {
            return TaskByTask.of(promises, pins, more, longest.minutes());
        }

        VisitPlan plan(int visits) {
            VisitPlan plan = BoundedVisitsTest.plan(promises, pins.size() + visits, pins, longest);
            BoundedVisitsTest.assertSound(plan, promises, pins, longest);
            return plan;
        }

        int kept(VisitPlan plan) {
            return promises.size() - plan.unkept().size();
        }

        Packing packing() {
            return new Packing(
                    Owed.byTechnicians(promises),
                    pins.stream()
                            .sorted(Pin.BY_DAY)
                            .map(pin -> VisitDraft.pinned(pin, longest))
                            .toList(),
                    promises.size(),
                    longest);
        }
    }

    @Test
    void twoWaysOfLookingFindTheSame() {
        for (int seed = 0; seed < 5_000 * MORE_IN_THE_FULL_RUN; seed++) {
            Case one = Case.of(seed, 1, 7);
            assertEquals(
                    EveryWay.of(one.promises, one.pins, one.more, one.longest.minutes()), one.best(), "seed " + seed);
        }
    }

    @Test
    void upToFourteenTasksNoOtherWayKeepsMoreOrNeedsFewerVisits() {
        int quickIsNotEnough = 0;
        for (int seed = 0; seed < 600 * MORE_IN_THE_FULL_RUN; seed++) {
            Case one = seed % 3 == 0
                    ? Case.of(seed, 8, PackedExactly.TASKS)
                    : Case.of(seed, PackedExactly.TASKS, PackedExactly.TASKS);
            EveryWay.Best best = one.best();
            VisitPlan plan = one.plan(one.more);
            assertEquals(Proof.FEWEST, plan.proof(), "seed " + seed);
            assertEquals(best.kept(), one.kept(plan), "seed " + seed);
            VisitPlan tight = one.plan(best.made());
            assertEquals(best.kept(), one.kept(tight), "seed " + seed);
            assertEquals(one.pins.size() + best.made(), tight.visits().size(), "seed " + seed);
            boolean all = best.kept() == one.promises.size();
            quickIsNotEnough += all && PackedQuickly.of(one.packing()).made().size() > best.made() ? 1 : 0;
        }
        assertTrue(quickIsNotEnough > 0, "no case needed more than the quick way");
    }

    /** Above fourteen the answer is what it says of itself, and the bound from below is one. */
    @Test
    void aboveFourteenItIsAsNearToTheFewestAsItSays() {
        int[] said = new int[Proof.values().length];
        for (int seed = 0; seed < 200 * MORE_IN_THE_FULL_RUN; seed++) {
            Case one = Case.of(seed, PackedExactly.TASKS + 1, PackedExactly.TASKS + 3);
            int fewest = TaskByTask.of(one.promises, one.pins, one.promises.size(), one.longest.minutes())
                    .made();
            long atLeast = VisitsAtLeast.of(one.packing());
            assertTrue(atLeast <= fewest, "seed " + seed + ": at least " + atLeast + ", yet " + fewest + " do");
            VisitPlan plan = one.plan(one.promises.size());
            assertTrue(plan.unkept().isEmpty(), "seed " + seed);
            long made = plan.visits().stream()
                    .filter(visit -> visit.pinned() == null && !visit.tasks().isEmpty())
                    .count();
            switch (plan.proof()) {
                case FEWEST -> assertEquals(fewest, made, "seed " + seed);
                case WITHIN_ONE -> assertTrue(made <= atLeast + 1 && made <= fewest + 1, "seed " + seed);
                case NOT_PROVEN -> assertTrue(made >= fewest, "seed " + seed);
            }
            said[plan.proof().ordinal()]++;
        }
        assertTrue(said[0] + said[1] > 4 * said[2], said[0] + " " + said[1] + " " + said[2]);
    }

    /** With too few visits nobody has proven that no other choice keeps more, and the plan says so. */
    @Test
    void aboveFourteenWithTooFewVisitsItSaysThatNothingIsProven() {
        for (int seed = 0; seed < 40 * MORE_IN_THE_FULL_RUN; seed++) {
            Case one = Case.of(seed, PackedExactly.TASKS + 1, PackedExactly.TASKS + 2);
            VisitPlan plan = one.plan(2);
            int best = TaskByTask.of(one.promises, one.pins, 2, one.longest.minutes())
                    .kept();
            assertTrue(one.kept(plan) <= best, "seed " + seed);
            assertTrue(one.kept(plan) == best || plan.proof() == Proof.NOT_PROVEN, "seed " + seed);
        }
    }
}
