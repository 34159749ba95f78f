package changeover.billing.pricing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** How minutes become billed hours, at which rate, and what the line says of it. */
class LabourTest {

    static final LocalDate DAY = LocalDate.of(2027, 2, 1);
    static final Coverage THIRTY = new Coverage(new Wording("Comfort", "Confort"), Map.of(), 30, BigDecimal.ZERO);

    @Test
    void minutes_are_counted_up_to_the_businesss_step() {
        hours(6, 1, "0.1");
        hours(6, 61, "1.1");
        hours(10, 20, "0.3333");
        hours(10, 61, "1.1667");
        hours(15, 20, "0.5");
        hours(15, 61, "1.25");
        hours(30, 30, "0.5");
        hours(30, 31, "1");
        hours(60, 1, "1");
        hours(60, 121, "3");
    }

    private static void hours(int step, int minutes, String expected) {
        assertEquals(
                expected,
                new LabourTerms(DAY, step, 0)
                        .hours(minutes)
                        .stripTrailingZeros()
                        .toPlainString());
    }

    @Test
    void a_sixth_of_an_hour_costs_what_its_four_decimals_give() {
        check(
                10,
                0,
                Coverage.NONE,
                VisitKind.CALL,
                70,
                OutsideHours.NONE,
                "hour 1.1667 112.00"); // 96 x 1.1667 = 112.0032
        check(10, 0, Coverage.NONE, VisitKind.CALL, 50, OutsideHours.NONE, "hour 0.8333 80.00"); // 79.9968
    }

    @Test
    void a_visit_that_no_plan_promised_is_counted_as_the_minimum_at_least() {
        check(15, 60, Coverage.NONE, VisitKind.CALL, 20, OutsideHours.NONE, "hour 1 96.00");
        check(15, 60, Coverage.NONE, VisitKind.CALL, 61, OutsideHours.NONE, "hour 1.25 120.00");
        check(15, 60, Coverage.NONE, VisitKind.EXTRA, 5, OutsideHours.NONE, "hour 1 96.00");
        check(15, 60, Coverage.NONE, VisitKind.PLAN, 20, OutsideHours.NONE, "hour 0.5 48.00");
        check(15, 60, THIRTY, VisitKind.CALL, 30, OutsideHours.NONE, "hour included");
        check(15, 60, THIRTY, VisitKind.CALL, 40, OutsideHours.NONE, "hour included, hour 0.5 48.00");
        check(15, 45, Coverage.NONE, VisitKind.CALL, 20, OutsideHours.night(20), "after-hours 0.75 108.00");
        check(
                15,
                60,
                Coverage.NONE,
                VisitKind.CALL,
                40,
                OutsideHours.night(15),
                "hour 0.75 72.00, after-hours 0.25 36.00");
    }

    @Test
    void a_weekend_and_a_holiday_have_their_own_rate_else_the_after_hours_one() {
        var outside = new OutsideHours(15, 30, 45);
        check(15, 0, Coverage.NONE, VisitKind.CALL, 120, outside, "hour 0.5 48.00, after-hours 1.5 216.00");
        rates = List.of(PriceBook.HOUR, PriceBook.AFTER_HOURS, PriceBook.WEEKEND, PriceBook.HOLIDAY);
        check(
                15,
                0,
                Coverage.NONE,
                VisitKind.CALL,
                120,
                outside,
                "hour 0.5 48.00, after-hours 0.25 36.00, weekend 0.5 80.00, holiday 0.75 144.00");
        check(15, 0, THIRTY, VisitKind.CALL, 90, outside, "hour included, weekend 0.25 40.00, holiday 0.75 144.00");
        check(15, 0, Coverage.NONE, VisitKind.EXTRA, 60, outside, "hour 1 96.00");
        rates = List.of(PriceBook.HOUR);
        check(15, 0, Coverage.NONE, VisitKind.CALL, 120, outside, "hour 2 192.00");
    }

    @Test
    void the_line_says_the_step_and_the_minimum_in_both_languages() {
        says(
                6,
                0,
                1,
                Coverage.NONE,
                "1 minute, counted up to the next 6 minutes.",
                "1 minute, comptée par tranches entières de 6 minutes.");
        says(
                30,
                0,
                31,
                Coverage.NONE,
                "31 minutes, counted up to the next half hour.",
                "31 minutes, comptées jusqu’à la demi-heure suivante.");
        says(
                60,
                0,
                31,
                Coverage.NONE,
                "31 minutes, counted up to the next whole hour.",
                "31 minutes, comptées jusqu’à l’heure suivante.");
        says(
                15,
                60,
                20,
                Coverage.NONE,
                "20 minutes; a visit is counted as at least 60 minutes, up to the next quarter hour.",
                "20 minutes; une visite compte au moins 60 minutes, jusqu’au quart d’heure suivant.");
        says(
                15,
                60,
                40,
                THIRTY,
                "10 minutes; a visit is counted as at least 60 minutes, of which the plan gave 30, up to the next quarter hour.",
                "10 minutes; une visite compte au moins 60 minutes, dont la formule a donné 30, jusqu’au quart d’heure suivant.");
    }

    @Test
    void two_at_a_visit_are_charged_both_and_the_line_says_so() {
        two(
                0,
                Coverage.NONE,
                60,
                "hour 192.00 120 minutes of 2 people, counted up to the next quarter hour. Not covered by a plan.",
                "hour 192.00 120 minutes de 2 personnes, comptées jusqu’au quart d’heure suivant. Non couvert par une formule.");
        two(
                60,
                Coverage.NONE,
                20,
                "hour 192.00 40 minutes of 2 people; a visit is counted as at least 60 minutes for each, up to the next quarter"
                        + " hour. Not covered by a plan.",
                "hour 192.00 40 minutes de 2 personnes; une visite compte au moins 60 minutes pour chacune, jusqu’au quart"
                        + " d’heure suivant. Non couvert par une formule.");
        two(
                0,
                THIRTY,
                15,
                "hour 0.00 Included: 30 minutes of the plan’s extra work were left, 30 are used here. The minutes of 2 people.",
                "hour 0.00 Compris\u00a0: il restait 30 minutes de travaux additionnels à la formule, 30 servent ici."
                        + " Les minutes de 2 personnes.");
    }

    private void two(int minimum, Coverage coverage, int minutes, String en, String fr) {
        var book = new PriceBook(
                List.of(new PriceEntry(ItemKind.LABOUR, PriceBook.HOUR, Money.of("96.00", "CAD"), null, DAY)),
                List.of(new LabourTerms(DAY, 15, minimum)));
        var visit = new ClosedVisit(DAY, VisitKind.CALL, 2, 0, minutes, 0, OutsideHours.NONE, List.of(), null);
        Charge line =
                Charges.of(visit, coverage, book, Currency.getInstance("CAD")).getFirst();
        String net = line.item() + " " + line.net().decimal() + " ";
        assertEquals(en, net + line.why().en());
        assertEquals(fr, net + line.why().fr());
    }

    private List<String> rates = List.of(PriceBook.HOUR, PriceBook.AFTER_HOURS);

    private static final Map<String, String> RATES = Map.of(
            PriceBook.HOUR, "96.00",
            PriceBook.AFTER_HOURS, "144.00",
            PriceBook.WEEKEND, "160.00",
            PriceBook.HOLIDAY, "192.00");

    private List<Charge> charges(
            int step, int minimum, Coverage coverage, VisitKind kind, int minutes, OutsideHours outside) {
        var entries = new ArrayList<PriceEntry>();
        rates.forEach(rate ->
                entries.add(new PriceEntry(ItemKind.LABOUR, rate, Money.of(RATES.get(rate), "CAD"), null, DAY)));
        var book = new PriceBook(entries, List.of(new LabourTerms(DAY, step, minimum)));
        var visit = new ClosedVisit(DAY, kind, 0, minutes, outside, List.of(), null);
        return Charges.of(visit, coverage, book, Currency.getInstance("CAD"));
    }

    private void check(
            int step,
            int minimum,
            Coverage coverage,
            VisitKind kind,
            int minutes,
            OutsideHours outside,
            String expected) {
        assertEquals(
                expected,
                charges(step, minimum, coverage, kind, minutes, outside).stream()
                        .map(charge -> charge.item()
                                + (charge.unit().equals("MIN")
                                        ? " included"
                                        : " "
                                                + charge.quantity()
                                                        .stripTrailingZeros()
                                                        .toPlainString() + " "
                                                + charge.net().decimal()))
                        .collect(Collectors.joining(", ")));
    }

    private void says(int step, int minimum, int minutes, Coverage coverage, String en, String fr) {
        Wording why = charges(step, minimum, coverage, VisitKind.CALL, minutes, OutsideHours.NONE)
                .getLast()
                .why();
        assertEquals(en, why.en().substring(0, en.length()));
        assertEquals(fr, why.fr().substring(0, fr.length()));
    }
}
