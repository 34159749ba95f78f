package changeover.deploy.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** A measure is judged by the median of its pairs, and a wrong sum is always a miss. */
class RatiosTest {

    @Test
    void less_time_is_better() {
        assertEquals(
                "season ratio=0.900 min=0.800 max=2.000 pairs=3 rows=10 checksum=ok verdict=good",
                pairs(Ratios.ofTimes("season", "1.2", "0.85")).line(10, true));
    }

    @Test
    void a_higher_rate_is_better() {
        assertEquals(
                "billing ratio=0.900 min=0.800 max=2.000 pairs=3 rows=10 checksum=ok verdict=good",
                pairs(Ratios.ofRates("billing", "0.6", "1.2")).line(10, true));
    }

    @Test
    void rows_that_differ_are_a_miss_however_fast() {
        assertEquals(
                "season ratio=0.900 min=0.800 max=2.000 pairs=3 rows=10 checksum=FAIL verdict=missed",
                pairs(Ratios.ofTimes("season", "1.2", "1.0")).line(10, false));
    }

    private static Ratios pairs(Ratios ratios) {
        ratios.add(800, 1000);
        ratios.add(2000, 1000);
        ratios.add(900, 1000);
        return ratios;
    }
}
