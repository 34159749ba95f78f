package changeover.billing.pricing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import changeover.billing.pricing.PlanCost.Missing;
import changeover.billing.pricing.PlanCost.What;
import changeover.contracts.money.Money;
import changeover.scheduling.dayplan.routes.AsTheCrowFlies;
import changeover.scheduling.dayplan.routes.Travel;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The answers stand beside the rows, reckoned by hand. */
class PlanCostTest {

    static final Currency CAD = Currency.getInstance("CAD");

    /** Two visits of 90 and 75 minutes, two filters. */
    static final PlanYear YEAR = new PlanYear(
            List.of(
                    new PlanYear.Visit(Map.of("gas-furnace", 50, "hrv", 40)),
                    new PlanYear.Visit(Map.of("air-conditioner", 75))),
            List.of(new PlanYear.Part("filter", "16x25x4", new BigDecimal("2"))),
            0);

    static final CostRates RATES =
            new CostRates(cad("57.00"), 15, new Trip.Driven(40), new Overhead.Percent(new BigDecimal("20")));

    /**
     * 165 minutes of 57.00 an hour: 156.75. Two times 15: 28.50. Two times 40: 76.00. Two filters at 15.75: 31.50.
     * A fifth of 292.75 is 58.55. Together 351.30.
     */
    @Test
    void a_year_costs_its_minutes_its_trips_its_parts_and_a_share_of_the_house() {
        check(
                YEAR,
                RATES,
                "tasks 156.75, set-up 28.50, travel 76.00, parts 31.50, ready 0.00, overhead 58.55",
                "351.30");
    }

    /**
     * An hour for two is 120 minutes: 114.00. Two times 15: 28.50. Two there and back, 80 minutes: 76.00. A fifth of 218.50 is
     * 43.70; together 262.20. By one it is half of it, 131.10.
     */
    @Test
    void two_at_a_visit_cost_twice() {
        check(
                new PlanYear(List.of(new PlanYear.Visit(Map.of("hrv", 120), 2)), List.of(), 0),
                RATES,
                "tasks 114.00, set-up 28.50, travel 76.00, parts 0.00, ready 0.00, overhead 43.70",
                "262.20");
        check(
                new PlanYear(List.of(new PlanYear.Visit(Map.of("hrv", 60))), List.of(), 0),
                RATES,
                "tasks 57.00, set-up 14.25, travel 38.00, parts 0.00, ready 0.00, overhead 21.85",
                "131.10");
    }

    /** An hour for two 114.00, two times 15 28.50, one trip 21.00: 163.50; a fifth 32.70; together 196.20. Two such visits: twice that. */
    @Test
    void a_priced_trip_counts_once_where_two_go() {
        var priced = new CostRates(
                cad("57.00"), 15, new Trip.Priced(cad("21.00")), new Overhead.Percent(new BigDecimal("20")));
        var visit = new PlanYear.Visit(Map.of("hrv", 120), 2);
        check(
                new PlanYear(List.of(visit), List.of(), 0),
                priced,
                "tasks 114.00, set-up 28.50, travel 21.00, parts 0.00, ready 0.00, overhead 32.70",
                "196.20");
        check(
                new PlanYear(List.of(visit, visit), List.of(), 0),
                priced,
                "tasks 228.00, set-up 57.00, travel 42.00, parts 0.00, ready 0.00, overhead 65.40",
                "392.40");
    }

    /** 165 + 30 + 80 = 275 minutes of 18.00 an hour: 82.50; with 292.75 together 375.25. */
    @Test
    void overhead_may_be_an_amount_for_each_hour_of_work_and_road() {
        check(
                YEAR,
                new CostRates(cad("57.00"), 15, new Trip.Driven(40), new Overhead.AnHour(cad("18.00"))),
                "tasks 156.75, set-up 28.50, travel 76.00, parts 31.50, ready 0.00, overhead 82.50",
                "375.25");
    }

    /** 30 minutes that the plan gives: 28.50 more before overhead, 321.25; a fifth of it 64.25; together 385.50. */
    @Test
    void minutes_that_the_plan_gives_cost_as_if_all_were_asked_for() {
        check(
                new PlanYear(YEAR.visits(), YEAR.parts(), 30),
                RATES,
                "tasks 156.75, set-up 28.50, travel 76.00, parts 31.50, ready 28.50, overhead 64.25",
                "385.50");
    }

    /** Two trips at 21.00: 42.00. 156.75 + 28.50 + 42.00 + 31.50 = 258.75; a fifth 51.75; together 310.50. */
    @Test
    void where_no_place_is_known_a_trip_costs_what_the_price_book_says() {
        check(
                YEAR,
                new CostRates(
                        cad("57.00"), 15, new Trip.Priced(cad("21.00")), new Overhead.Percent(new BigDecimal("20"))),
                "tasks 156.75, set-up 28.50, travel 42.00, parts 31.50, ready 0.00, overhead 51.75",
                "310.50");
    }

    /** 50 minutes of 0.03 an hour are 0.025, half-up 0.03; 7.5 % of 0.03 is 0.00225, so nothing. */
    @Test
    void each_cause_is_rounded_half_up_once() {
        check(
                new PlanYear(List.of(new PlanYear.Visit(Map.of("hrv", 50))), List.of(), 0),
                new CostRates(cad("0.03"), 0, new Trip.Driven(0), new Overhead.Percent(new BigDecimal("7.5"))),
                "tasks 0.03, set-up 0.00, travel 0.00, parts 0.00, ready 0.00, overhead 0.00",
                "0.03");
    }

    @Test
    void a_year_without_visits_and_minutes_needs_no_rates() {
        PlanCost nothing = PlanCost.of(
                new PlanYear(List.of(), List.of(), 0),
                new CostRates(null, null, new Trip.Unknown(), new Overhead.Percent(BigDecimal.ZERO)),
                _ -> Optional.empty(),
                CAD);
        assertEquals(List.of(), nothing.missing());
    }

    @Test
    void what_nobody_wrote_down_is_named_and_there_is_no_price_then() {
        PlanCost bare =
                PlanCost.of(YEAR, new CostRates(null, null, new Trip.Unknown(), null), _ -> Optional.empty(), CAD);
        assertEquals(
                List.of(
                        new Missing(What.HOUR, ""),
                        new Missing(What.SET_UP, ""),
                        new Missing(What.TRIP, ""),
                        new Missing(What.PART, "filter 16x25x4"),
                        new Missing(What.OVERHEAD, "")),
                bare.missing());
        assertEquals(Optional.empty(), bare.priceFor(new BigDecimal("30")));
        PlanCost known = PlanCost.of(YEAR, RATES, _ -> Optional.empty(), CAD);
        assertEquals(List.of(new Missing(What.PART, "filter 16x25x4")), known.missing());
        // 292.75 without 31.50 is 261.25; with a fifth 313.50.
        assertEquals("313.50", known.total().decimal());
    }

    /** 351.30 / 0.65 = 540.4615; 60 / 0.6 = 100; 100 / 0.667 = 149.925, half-up 149.93; a loss of half: 60 / 1.5 = 40. */
    @Test
    void a_price_leaves_the_margin_as_a_part_of_itself() {
        assertEquals(Optional.of(cad("540.46")), cost(YEAR, RATES).priceFor(new BigDecimal("35")));
        assertEquals(cad("100.00"), Margin.price(cad("60.00"), new BigDecimal("40")));
        assertEquals(cad("149.93"), Margin.price(cad("100.00"), new BigDecimal("33.3")));
        assertEquals(cad("40.00"), Margin.price(cad("60.00"), new BigDecimal("-50")));
        assertEquals(cad("60.00"), Margin.price(cad("60.00"), BigDecimal.ZERO));
        // (389.00 - 351.30) / 389.00 = 9.691 %; at 249.00 it is -41.084 %.
        assertEquals(Optional.of(new BigDecimal("9.7")), Margin.of(cad("389.00"), cad("351.30")));
        assertEquals(Optional.of(new BigDecimal("-41.1")), Margin.of(cad("249.00"), cad("351.30")));
        assertEquals(Optional.empty(), Margin.of(cad("0.00"), cad("1.00")));
        assertThrows(IllegalArgumentException.class, () -> Margin.price(cad("60.00"), new BigDecimal("100")));
    }

    /** The price is never further than half a cent from what leaves the margin: price x (1 - margin) = cost. */
    @Test
    void price_and_margin_belong_together_for_any_cost() {
        var chance = new Random(20261130);
        for (int row = 0; row < 20_000; row++) {
            Money cost = new Money(1 + chance.nextInt(5_000_000), CAD);
            BigDecimal margin = BigDecimal.valueOf(chance.nextInt(999), 1);
            BigDecimal left = BigDecimal.valueOf(100).subtract(margin).movePointLeft(2);
            BigDecimal off = Margin.price(cost, margin).amount().multiply(left).subtract(cost.amount());
            BigDecimal half = new BigDecimal("0.005").multiply(left);
            assertEquals(true, off.abs().compareTo(half) <= 0, cost + " at " + margin + " is off by " + off);
        }
    }

    /** A tenth of a degree of latitude is 11.1195 km; 1.3 times at 45 km/h is 1,156.43 s, with begun seconds 1,157; there and back 38.57 minutes. */
    @Test
    void a_trip_is_the_drive_from_the_shop_and_back() {
        assertEquals(
                new Trip.Driven(39),
                Trip.between(new Travel.Place(46.0, -77.0), new Travel.Place(46.1, -77.0), AsTheCrowFlies.USUAL));
        assertEquals(
                new Trip.Driven(0),
                Trip.between(new Travel.Place(46.0, -77.0), new Travel.Place(46.0, -77.0), AsTheCrowFlies.USUAL));
    }

    private static void check(PlanYear year, CostRates rates, String causes, String total) {
        PlanCost cost = cost(year, rates);
        assertEquals(
                causes,
                Arrays.stream(Cause.values())
                        .map(cause -> cause.code() + " " + cost.of(cause).decimal())
                        .collect(Collectors.joining(", ")));
        assertEquals(total, cost.total().decimal());
        assertEquals(List.of(), cost.missing());
    }

    static PlanCost cost(PlanYear year, CostRates rates) {
        return PlanCost.of(year, rates, PlanCostTest::filter, CAD);
    }

    static Optional<Money> filter(PlanYear.Part part) {
        return part.kind().equals("filter") ? Optional.of(cad("15.75")) : Optional.empty();
    }

    static Money cad(String amount) {
        return Money.of(amount, "CAD");
    }
}
