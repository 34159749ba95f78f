package changeover.scheduling.visits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.LongestVisit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Visits that may last so many minutes, beside every other way of laying them. */
class BoundedVisitsTest {

    private static LongestVisit longest(Random random) {
        return new LongestVisit(20 + 5 * random.nextInt(20));
    }

    @Test
    void noOtherWayKeepsMoreOrNeedsFewerVisits() {
        SmallYears.each(5_000, 7, (promises, random) -> exact(promises, random));
    }

    private static void exact(List<Promise> promises, Random random) {
        LongestVisit longest = longest(random);
        List<Pin> pins = SmallYears.pins(random);
        int more = random.nextInt(promises.size() + 1);
        EveryWay.Best best = EveryWay.of(promises, pins, more, longest.minutes());
        VisitPlan plan = plan(promises, pins.size() + more, pins, longest);
        assertSound(plan, promises, pins, longest);
        assertEquals(Proof.FEWEST, plan.proof());
        assertEquals(best.kept(), promises.size() - plan.unkept().size());
        VisitPlan tight = plan(promises, pins.size() + best.made(), pins, longest);
        assertEquals(best.kept(), promises.size() - tight.unkept().size());
        assertEquals(pins.size() + best.made(), tight.visits().size());
    }

    /** The quick way and the bound from below are asked where every way can be tried beside them. */
    @Test
    void whatTheQuickWaySaysOfItselfIsTrue() {
        int[] said = new int[Proof.values().length];
        SmallYears.each(4_000, 7, (promises, random) -> {
            LongestVisit longest = longest(random);
            List<Pin> pins = SmallYears.pins(random);
            Packing asked = new Packing(
                    Owed.byTechnicians(promises),
                    pins.stream()
                            .sorted(Pin.BY_DAY)
                            .map(pin -> VisitDraft.pinned(pin, longest))
                            .toList(),
                    promises.size(),
                    longest);
            int fewest = EveryWay.of(promises, pins, promises.size(), longest.minutes())
                    .made();
            assertTrue(VisitsAtLeast.of(asked) <= fewest);
            Packed quick = PackedQuickly.of(asked);
            assertTrue(quick.isWithin(asked));
            assertTrue(quick.left().isEmpty());
            int more = quick.made().size() - fewest;
            switch (quick.proof()) {
                case FEWEST -> assertEquals(0, more);
                case WITHIN_ONE -> assertTrue(more >= 0 && more <= 1);
                case NOT_PROVEN -> assertTrue(more >= 0);
            }
            said[quick.proof().ordinal()]++;
        });
        assertTrue(said[0] > 9 * (said[1] + said[2]), said[0] + " " + said[1] + " " + said[2]);
    }

    /** A large house: four machines, two changeovers, a dozen tasks each. */
    @Test
    void aboveFourteenItIsWithinOneVisitOrSaysSo() {
        int[] said = new int[Proof.values().length];
        for (int seed = 0; seed < (Boolean.getBoolean("changeover.deep") ? 5_000 : 300); seed++) {
            Random random = new Random(seed);
            List<Promise> promises = SmallYears.promises(15 + random.nextInt(60), random);
            List<Pin> pins = SmallYears.pins(random);
            LongestVisit longest = new LongestVisit(60 + 10 * random.nextInt(30));
            VisitPlan plan = plan(promises, random.nextInt(10) == 0 ? pins.size() + 2 : 80, pins, longest);
            assertSound(plan, promises, pins, longest);
            said[plan.proof().ordinal()]++;
        }
        assertTrue(said[0] + said[1] > 4 * said[2], said[0] + " " + said[1] + " " + said[2]);
    }

    @Test
    void aTaskLongerThanAVisitHasOneOfItsOwnAndSaysSo() {
        VisitPlan plan = plan(
                List.of(
                        SmallYears.promise(1, 0, 10, 240),
                        SmallYears.promise(2, 0, 10, 30),
                        SmallYears.promise(3, 0, 10, 60)),
                2,
                List.of(),
                new LongestVisit(90));
        assertEquals(
                Map.of(1, 240, 2, 90),
                plan.visits().stream()
                        .collect(Collectors.toMap(visit -> visit.tasks().size(), PlannedVisit::minutes)));
        PlannedVisit alone = plan.visits().stream()
                .filter(visit -> visit.minutes() == 240)
                .findFirst()
                .orElseThrow();
        assertEquals(
                "This task takes 240\u00a0minutes, more than the 90 that a visit may last: it has a visit of its own.",
                alone.longer().orElseThrow().en());
        assertEquals(
                1,
                plan.visits().stream()
                        .filter(visit -> visit.longer().isPresent())
                        .count());
    }

    @Test
    void whatDoesNotFitIsNamedWithItsMinutes() {
        VisitPlan plan = plan(
                List.of(SmallYears.promise(1, 0, 10, 60), SmallYears.promise(2, 0, 10, 45)),
                1,
                List.of(),
                new LongestVisit(90));
        assertEquals(
                "Its 45\u00a0minutes do not fit into the visits between 1\u00a0March 2026 and 10\u00a0March 2026, of"
                        + " 90\u00a0minutes at most; it would take one more visit than the plan sells.",
                plan.unkept().getFirst().why().en());
        assertEquals(60, plan.visits().getFirst().minutes());
    }

    static VisitPlan plan(List<Promise> promises, int sold, List<Pin> pins, LongestVisit longest) {
        return VisitPlan.of(promises, sold, SmallYears.TERM, pins, SmallYears.NO_SEASONS, longest);
    }

    /** Nothing is lost or doubled, no visit is too long or without a day, no pin moves or loses anything. */
    static void assertSound(VisitPlan plan, List<Promise> promises, List<Pin> pins, LongestVisit longest) {
        List<Promise> placed = new ArrayList<>();
        Map<java.util.UUID, Pin> byId = pins.stream().collect(Collectors.toMap(Pin::visitId, Function.identity()));
        for (PlannedVisit visit : plan.visits()) {
            List<Promise> came = new ArrayList<>(visit.tasks());
            Pin pin = visit.pinned() == null ? null : byId.remove(visit.pinned());
            if (pin != null) {
                assertEquals(Window.ofDay(pin.day()), visit.window());
                assertEquals(pin.holds(), came.subList(0, pin.holds().size()));
                came.subList(0, pin.holds().size()).clear();
                assertTrue(pin.takesMore() || came.isEmpty());
            }
            for (Promise promise : came) {
                LocalDate last = visit.window().last();
                assertTrue(promise.window().contains(visit.window().from())
                        && promise.window().contains(last));
            }
            assertTrue(came.isEmpty() || visit.tasks().size() == 1 || visit.minutes() <= longest.minutes());
            placed.addAll(came);
        }
        assertTrue(byId.isEmpty());
        plan.unkept().forEach(one -> placed.add(one.promise()));
        assertEquals(counted(promises), counted(placed));
    }

    static Map<Promise, Integer> counted(List<Promise> promises) {
        Map<Promise, Integer> counted = new HashMap<>();
        promises.stream()
                .sorted(Comparator.comparing(Promise::taskCode))
                .forEach(one -> counted.merge(one, 1, Integer::sum));
        return counted;
    }
}
