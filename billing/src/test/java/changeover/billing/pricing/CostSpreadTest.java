package changeover.billing.pricing;

import static changeover.billing.pricing.PlanCostTest.RATES;
import static changeover.billing.pricing.PlanCostTest.YEAR;
import static changeover.billing.pricing.PlanCostTest.cad;
import static changeover.billing.pricing.PlanCostTest.cost;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.pricing.CostSpread.Past;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class CostSpreadTest {

    static final Past AS_PLANNED = past("gas-furnace", 100, 100);

    @Test
    void a_past_that_went_as_planned_gives_the_plan_itself() {
        List<Past> past = new ArrayList<>(Collections.nCopies(20, AS_PLANNED));
        past.addAll(Collections.nCopies(20, past("air-conditioner", 60, 60)));
        past.addAll(Collections.nCopies(20, past("hrv", 40, 40)));
        CostSpread spread = spread(past, 500, 1);
        assertEquals(cost(YEAR, RATES).total(), spread.low());
        assertEquals(cost(YEAR, RATES).total(), spread.middle());
        assertEquals(cost(YEAR, RATES).total(), spread.high());
        assertEquals(Set.of(), spread.few());
        assertFalse(spread.restsOnLittle());
    }

    @Test
    void a_past_that_always_took_half_as_long_again_is_as_sure_and_dearer() {
        List<Past> past = Collections.nCopies(40, past("gas-furnace", 100, 150));
        CostSpread spread = spread(past, 300, 1);
        assertEquals(spread.low(), spread.high());
        // 50 -> 75, 40 -> 60, 75 -> 112.5, half-up 113: 248 minutes, 235.60. Set-up 15 -> 22.5 -> 23, twice: 43.70.
        // Travel 76.00, parts 31.50: 386.80; a fifth 77.36; together 464.16.
        assertEquals(cad("464.16"), spread.middle());
    }

    /** One visit, as often 60 as 120 minutes: one year in two is no dearer than the short one, nine in ten than the long one. */
    @Test
    void two_ways_that_a_visit_may_go_are_both_seen() {
        var year = new PlanYear(List.of(new PlanYear.Visit(Map.of("hrv", 60))), List.of(), 0);
        var rates = new CostRates(cad("60.00"), 0, new Trip.Driven(0), new Overhead.Percent(BigDecimal.ZERO));
        List<Past> past = new ArrayList<>(Collections.nCopies(30, past("hrv", 60, 60)));
        past.addAll(Collections.nCopies(30, past("hrv", 60, 120)));
        CostSpread spread = CostSpread.of(year, rates, PlanCostTest::filter, PlanCostTest.CAD, past, 4_000, 7);
        assertEquals(cad("60.00"), spread.low());
        assertEquals(cad("120.00"), spread.high());
    }

    /**
     * A hundred visits that take 60 or 120 minutes: the sum is binomial with mean 150.00 an hour-and-a-half each and
     * standard deviation 0.5 x 60 x sqrt(100) = 300 minutes; nine years in ten below 9,000 + 1.2816 x 300 = 9,384.
     */
    @Test
    void many_visits_lie_around_their_mean_as_chance_says() {
        var year = new PlanYear(Collections.nCopies(100, new PlanYear.Visit(Map.of("hrv", 60))), List.of(), 0);
        var rates = new CostRates(cad("60.00"), 0, new Trip.Driven(0), new Overhead.Percent(BigDecimal.ZERO));
        List<Past> past = new ArrayList<>(Collections.nCopies(30, past("hrv", 60, 60)));
        past.addAll(Collections.nCopies(30, past("hrv", 60, 120)));
        CostSpread spread = CostSpread.of(year, rates, PlanCostTest::filter, PlanCostTest.CAD, past, 10_000, 7);
        assertTrue(
                Math.abs(spread.middle().minor() - 900_000) <= 6_000,
                spread.middle().decimal());
        assertTrue(
                Math.abs(spread.high().minor() - 938_400) <= 6_000,
                spread.high().decimal());
        assertTrue(
                Math.abs(spread.low().minor() - 861_600) <= 6_000, spread.low().decimal());
    }

    /** Coming again costs its minutes and a trip: 20 of 57.00 an hour 19.00, the trip 38.00, with a fifth 68.40, at each of two visits. */
    @Test
    void a_return_without_charge_costs_its_minutes_and_its_trip() {
        List<Past> past = Collections.nCopies(40, new Past(Set.of("gas-furnace"), 60, 60, Map.of(), 20));
        assertEquals(
                cost(YEAR, RATES).total().plus(cad("68.40").times(2)),
                spread(past, 200, 3).middle());
    }

    /**
     * Half as many again at each visit: 3 filters at 15.75 are 47.25 instead of 31.50; with a fifth 18.90 dearer. None ever:
     * without parts 261.25, and a fifth: 313.50. A past that says nothing of filters gives what the plan says.
     */
    @Test
    void parts_really_given_count() {
        List<Past> more =
                Collections.nCopies(40, new Past(Set.of("hrv"), 60, 60, Map.of("filter", new BigDecimal("1.5")), null));
        assertEquals(
                cost(YEAR, RATES).total().plus(cad("18.90")),
                spread(more, 200, 3).middle());
        List<Past> none =
                Collections.nCopies(40, new Past(Set.of("hrv"), 60, 60, Map.of("filter", BigDecimal.ZERO), null));
        assertEquals(cad("313.50"), spread(none, 200, 3).high());
        List<Past> pads =
                Collections.nCopies(40, new Past(Set.of("hrv"), 60, 60, Map.of("pad", BigDecimal.ZERO), null));
        assertEquals(cost(YEAR, RATES).total(), spread(pads, 200, 3).middle());
    }

    @Test
    void the_same_seed_gives_the_same_answer_and_little_is_said_to_be_little() {
        List<Past> past = List.of(past("hrv", 60, 50), past("hrv", 60, 75), past("gas-furnace", 90, 130));
        assertEquals(spread(past, 400, 11), spread(past, 400, 11));
        assertNotEquals(spread(past, 25, 11), spread(past, 25, 12));
        assertTrue(spread(past, 400, 11).restsOnLittle());
        assertEquals(3, spread(past, 400, 11).visits());
        assertEquals(
                Set.of("air-conditioner", "gas-furnace", "hrv"),
                spread(past, 400, 11).few());
        assertThrows(IllegalArgumentException.class, () -> spread(List.of(), 400, 11));
    }

    private static CostSpread spread(List<Past> past, int years, long seed) {
        return CostSpread.of(YEAR, RATES, PlanCostTest::filter, PlanCostTest.CAD, past, years, seed);
    }

    private static Past past(String kind, int planned, int actual) {
        return new Past(Set.of(kind), planned, actual, Map.of(), null);
    }
}
