package changeover.scheduling.visits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.Due;
import changeover.contracts.catalogue.LongestVisit;
import changeover.contracts.catalogue.Who;
import changeover.contracts.words.Wording;
import java.lang.management.ManagementFactory;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** The fewest visits for very many windows: sixteen times as many take about twenty times as long, never the square of it. */
class ManyWindowsTest {

    private static final LocalDate FIRST = LocalDate.of(2026, 1, 1);

    @Test
    void theTimeGrowsAsTheWindowsDo() {
        long few = quickest(12_500);
        long many = quickest(200_000);
        // n log n: 16 times log 200,000 by log 12,500 is 20.7; a square would be 256. Between them lies what a full
        // cache costs.
        assertTrue(many < 100 * few, many + " ns of " + few);
    }

    @Test
    void andTheAnswerIsTheGreedyOne() {
        List<Promise> promises = promises(25_000);
        Packed packed = packed(promises);
        assertEquals(
                FewestVisits.touchingAll(promises.stream().map(Promise::window).toList())
                        .size(),
                packed.made().size());
        assertEquals(Proof.FEWEST, packed.proof());
        assertEquals(List.of(), packed.left());
    }

    /** Of several, by the time of this thread alone, so that a busy machine changes nothing. */
    private static long quickest(int count) {
        List<Promise> promises = promises(count);
        long quickest = Long.MAX_VALUE;
        for (int time = 0; time < 7; time++) {
            long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            packed(promises);
            quickest = Math.min(quickest, ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before);
        }
        return quickest;
    }

    private static Packed packed(List<Promise> promises) {
        return new Packing(Owed.byTechnicians(promises), new ArrayList<>(), promises.size(), LongestVisit.ANY).packed();
    }

    private static List<Promise> promises(int count) {
        var random = new Random(11);
        List<Promise> promises = new ArrayList<>();
        for (int number = 0; number < count; number++) {
            LocalDate from = FIRST.plusDays(random.nextInt(count));
            Window window = new Window(from, from.plusDays(1 + random.nextInt(30)));
            promises.add(new Promise(
                    new UUID(1, number),
                    "task",
                    Who.TECHNICIAN,
                    5,
                    new Due(window, window.from(), Due.Act.DO),
                    new Wording("because", "parce que")));
        }
        return promises;
    }
}
