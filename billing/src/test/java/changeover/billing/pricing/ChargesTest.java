package changeover.billing.pricing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.pricing.ClosedVisit.UsedPart;
import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ChargesTest {

    static final LocalDate DAY = LocalDate.of(2026, 10, 5);
    static final Currency CAD = Currency.getInstance("CAD");
    static final PriceBook PRICES = new PriceBook(List.of(
            price(ItemKind.LABOUR, PriceBook.HOUR, "96.00", "2026-01-01"),
            price(ItemKind.LABOUR, PriceBook.HOUR, "99.00", "2026-11-01"),
            price(ItemKind.TRAVEL, PriceBook.VISIT, "35.00", "2026-01-01"),
            price(ItemKind.PART, "filter-16x25x1", "18.50", "2026-01-01"),
            price(ItemKind.PART, "pad-10", "24.95", "2026-01-01"),
            price(ItemKind.PART, "glycol", "12.10", "2026-01-01")));
    static final Coverage COMFORT = new Coverage(
            new Wording("Comfort", "Confort"),
            Map.of("filter", new Coverage.Cap(new BigDecimal("2"), new BigDecimal("1"))),
            30,
            new BigDecimal("10"));

    @Test
    void a_call_without_a_plan_is_billed_by_the_quarter_hour_with_its_trip() {
        check(
                visit(VisitKind.CALL, 0, 61),
                Coverage.NONE,
                "hour billable 1.250 HUR 96.00 -0.00 = 120.00",
                "visit billable 1.000 C62 35.00 -0.00 = 35.00");
        check(visit(VisitKind.CALL, 0, 60), Coverage.NONE, "hour billable 1.000 HUR 96.00 -0.00 = 96.00", TRIP);
        check(visit(VisitKind.CALL, 0, 1), Coverage.NONE, "hour billable 0.250 HUR 96.00 -0.00 = 24.00", TRIP);
    }

    static final String TRIP = "visit billable 1.000 C62 35.00 -0.00 = 35.00";

    @Test
    void the_minutes_of_a_call_outside_working_hours_have_their_own_rate() {
        var prices = new PriceBook(Stream.concat(
                        PRICES.entries().stream(),
                        Stream.of(price(ItemKind.LABOUR, PriceBook.AFTER_HOURS, "144.00", "2026-06-01")))
                .toList());
        check(
                night(VisitKind.CALL, 100, 80),
                Coverage.NONE,
                prices,
                "hour billable 0.500 HUR 96.00 -0.00 = 48.00",
                "after-hours billable 1.500 HUR 144.00 -0.00 = 216.00",
                TRIP);
        check(
                night(VisitKind.CALL, 60, 75),
                Coverage.NONE,
                prices,
                "after-hours billable 1.000 HUR 144.00 -0.00 = 144.00",
                TRIP);
        check(
                night(VisitKind.CALL, 60, 45),
                COMFORT,
                prices,
                "hour included 30.000 MIN 0.00 -0.00 = 0.00",
                "after-hours discounted 0.500 HUR 144.00 -7.20 = 64.80",
                "visit discounted 1.000 C62 35.00 -3.50 = 31.50");
        check(
                night(VisitKind.EXTRA, 60, 60),
                Coverage.NONE,
                prices,
                "hour billable 1.000 HUR 96.00 -0.00 = 96.00",
                TRIP);
        check(
                night(VisitKind.CALL, 60, 60),
                Coverage.NONE,
                PRICES,
                "hour billable 1.000 HUR 96.00 -0.00 = 96.00",
                TRIP);
    }

    private static ClosedVisit night(VisitKind kind, int extra, int night) {
        return new ClosedVisit(DAY, kind, 0, extra, OutsideHours.night(night), List.of(), null);
    }

    @Test
    void a_visit_without_minutes_has_no_line_of_labour() {
        check(
                visit(VisitKind.RETURN, 0, 0, part("pad-10", "pad", "1")),
                Coverage.NONE,
                "pad-10 included 1.000 C62 0.00 -0.00 = 0.00");
        check(visit(VisitKind.RETURN, 30, 15), COMFORT, "promised included 45.000 MIN 0.00 -0.00 = 0.00");
        check(visit(VisitKind.PLAN, 0, 0), COMFORT, "");
    }

    @Test
    void a_plan_visit_gives_its_promised_minutes() {
        check(visit(VisitKind.PLAN, 75, 0), COMFORT, "promised included 75.000 MIN 0.00 -0.00 = 0.00");
    }

    @Test
    void extra_minutes_use_up_the_plans_then_are_billed_less_its_discount() {
        check(
                visit(VisitKind.PLAN, 75, 50),
                COMFORT,
                "promised included 75.000 MIN 0.00 -0.00 = 0.00",
                "hour included 30.000 MIN 0.00 -0.00 = 0.00",
                "hour discounted 0.500 HUR 96.00 -4.80 = 43.20");
    }

    @Test
    void a_part_is_included_up_to_its_cap_and_the_rest_is_discounted() {
        check(
                visit(VisitKind.PLAN, 0, 0, part("filter-16x25x1", "filter", "3")),
                COMFORT,
                "filter-16x25x1 included 1.000 C62 0.00 -0.00 = 0.00",
                "filter-16x25x1 discounted 2.000 C62 18.50 -3.70 = 33.30");
        check(
                visit(
                        VisitKind.PLAN,
                        0,
                        0,
                        part("filter-16x25x1", "filter", "1"),
                        part("filter-16x25x1", "filter", "1"),
                        part("pad-10", "pad", "1")),
                COMFORT,
                "filter-16x25x1 included 1.000 C62 0.00 -0.00 = 0.00",
                "filter-16x25x1 discounted 1.000 C62 18.50 -1.85 = 16.65",
                "pad-10 discounted 1.000 C62 24.95 -2.50 = 22.45");
    }

    @Test
    void a_return_visit_and_a_part_under_warranty_cost_nothing() {
        check(
                visit(VisitKind.RETURN, 0, 45, part("pad-10", "pad", "1")),
                Coverage.NONE,
                "promised included 45.000 MIN 0.00 -0.00 = 0.00",
                "pad-10 included 1.000 C62 0.00 -0.00 = 0.00");
        check(
                visit(
                        VisitKind.PLAN,
                        0,
                        0,
                        new UsedPart("pad-10", "pad", new Wording("Pad", "Tampon"), BigDecimal.ONE, "C62", true)),
                Coverage.NONE,
                "pad-10 included 1.000 C62 0.00 -0.00 = 0.00");
    }

    @Test
    void a_fraction_is_rounded_half_up_on_the_line() {
        check(
                visit(VisitKind.PLAN, 0, 0, part("glycol", "glycol", "0.75")),
                COMFORT,
                "glycol discounted 0.750 C62 12.10 -0.91 = 8.17");
        check(
                visit(VisitKind.PLAN, 0, 0, part("glycol", "glycol", "0.125")),
                COMFORT,
                "glycol discounted 0.125 C62 12.10 -0.15 = 1.36");
    }

    @Test
    void an_item_without_a_price_waits_for_one() {
        check(
                visit(VisitKind.PLAN, 0, 0, part("unknown", "motor", "1")),
                Coverage.NONE,
                "unknown billable 1.000 C62 no price -0.00 = 0.00");
    }

    @Test
    void the_price_is_that_of_the_day() {
        assertEquals("96.00", on("2026-10-31"));
        assertEquals("99.00", on("2026-11-01"));
        assertEquals("none", on("2025-12-31"));
    }

    @Test
    void each_line_says_why_in_both_languages() {
        List<Charge> charges =
                Charges.of(visit(VisitKind.PLAN, 75, 50, part("filter-16x25x1", "filter", "2")), COMFORT, PRICES, CAD);
        assertEquals(
                List.of(
                        "Included in your plan Comfort.",
                        "Included: 30 minutes of the plan’s extra work were left, 30 are used here.",
                        "20 minutes, counted up to the next quarter hour. Not included in the plan; your plan takes 10% off.",
                        "Included: the plan gives 2 a term, 1 left before this.",
                        "Beyond the 2 a term that the plan gives; your plan takes 10% off."),
                charges.stream().map(charge -> charge.why().en()).toList());
        assertEquals(
                "Au-delà des 2 par entente que donne la formule; votre formule accorde 10\u00a0% de rabais.",
                charges.getLast().why().fr());
    }

    private static String on(String day) {
        return PRICES.on(ItemKind.LABOUR, PriceBook.HOUR, LocalDate.parse(day))
                .map(entry -> entry.price().decimal())
                .orElse("none");
    }

    private static void check(ClosedVisit visit, Coverage coverage, String... expected) {
        check(visit, coverage, PRICES, expected);
    }

    private static void check(ClosedVisit visit, Coverage coverage, PriceBook prices, String... expected) {
        assertEquals(
                String.join("\n", expected),
                Charges.of(visit, coverage, prices, CAD).stream()
                        .map(ChargesTest::said)
                        .collect(Collectors.joining("\n")));
    }

    private static String said(Charge charge) {
        return charge.item() + " " + charge.covered().code() + " "
                + charge.quantity().toPlainString() + " " + charge.unit() + " "
                + (charge.unitPrice() == null ? "no price" : charge.unitPrice().decimal())
                + " -" + charge.discount().decimal() + " = " + charge.net().decimal();
    }

    private static ClosedVisit visit(VisitKind kind, int promised, int extra, UsedPart... parts) {
        return new ClosedVisit(DAY, kind, promised, extra, OutsideHours.NONE, Arrays.asList(parts), null);
    }

    private static UsedPart part(String code, String kind, String quantity) {
        return new UsedPart(code, kind, new Wording(code, code), new BigDecimal(quantity), "C62", false);
    }

    private static PriceEntry price(ItemKind kind, String code, String price, String from) {
        return new PriceEntry(kind, code, Money.of(price, "CAD"), null, LocalDate.parse(from));
    }
}
