package changeover.billing.pricing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.pricing.ClosedVisit.UsedPart;
import changeover.billing.pricing.Warranty.By;
import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Warranty before plan before price: who answers for a part, and whether its labour and trip go with it. */
class GuaranteedChargesTest {

    private static final Warranty MAKER = new Warranty(By.MAKER, new Wording("maker", "fabricant"));
    private static final Warranty MAKER_AND_US =
            new Warranty(By.MAKER, new Wording("maker", "fabricant"), new Wording("We do.", "Nous."));
    private static final Warranty US = new Warranty(By.US, new Wording("us", "nous"));
    private static final Warranty LAW = new Warranty(By.LAW, new Wording("law", "loi"));
    private static final Warranty ENDED = new Warranty(By.NOBODY, new Wording("It ended.", "Finie."));

    private static UsedPart part(String code, String kind, String quantity, Warranty warranty) {
        return new UsedPart(code, kind, new Wording(code, code), new BigDecimal(quantity), "C62", warranty);
    }

    private static void check(
            VisitKind kind, int promised, int extra, Coverage coverage, List<UsedPart> parts, String... lines) {
        check(kind, promised, extra, 0, coverage, parts, lines);
    }

    private static void check(
            VisitKind kind,
            int promised,
            int extra,
            int other,
            Coverage coverage,
            List<UsedPart> parts,
            String... lines) {
        var visit = new ClosedVisit(ChargesTest.DAY, kind, 1, promised, extra, other, OutsideHours.NONE, parts, null);
        assertEquals(
                String.join("\n", lines),
                Charges.of(visit, coverage, ChargesTest.PRICES, ChargesTest.CAD).stream()
                        .map(line -> line.item() + " " + line.net().decimal() + " "
                                + line.why().en())
                        .collect(Collectors.joining("\n")));
    }

    @Test
    void the_maker_gives_the_part_and_the_labour_is_charged() {
        check(
                VisitKind.CALL,
                0,
                60,
                Coverage.NONE,
                List.of(part("pad-10", "pad", "1", MAKER)),
                "hour 96.00 60 minutes, counted up to the next quarter hour. Not covered by a plan.",
                "pad-10 0.00 maker",
                "visit 35.00 Not covered by a plan.");
    }

    @Test
    void where_we_answer_for_what_the_maker_gives_the_labour_and_the_trip_cost_nothing() {
        check(
                VisitKind.CALL,
                0,
                60,
                Coverage.NONE,
                List.of(part("pad-10", "pad", "1", MAKER_AND_US)),
                "promised 0.00 We do.",
                "pad-10 0.00 maker");
        check(
                VisitKind.CALL,
                0,
                60,
                Coverage.NONE,
                List.of(part("pad-10", "pad", "1", US), part("glycol", "glycol", "1", MAKER_AND_US)),
                "promised 0.00 No charge: labour and trip go with the part under guarantee. We do.",
                "pad-10 0.00 us",
                "glycol 0.00 maker");
        check(
                VisitKind.CALL,
                0,
                15,
                Coverage.NONE,
                List.of(part("pad-10", "pad", "1", MAKER), part("glycol", "glycol", "1", US)),
                "hour 24.00 15 minutes, counted up to the next quarter hour. Not covered by a plan.",
                "pad-10 0.00 maker",
                "glycol 0.00 us",
                "visit 35.00 Not covered by a plan.");
    }

    @Test
    void other_work_beside_a_part_under_guarantee_is_charged_with_the_trip_and_the_rest_is_not() {
        String other = "For other work than the part under guarantee. Not covered by a plan.";
        check(
                VisitKind.CALL,
                0,
                120,
                120,
                Coverage.NONE,
                List.of(part("pad-10", "pad", "1", US)),
                "hour 192.00 120 minutes, counted up to the next quarter hour. " + other,
                "pad-10 0.00 us",
                "visit 35.00 " + other);
        check(
                VisitKind.EXTRA,
                0,
                150,
                120,
                Coverage.NONE,
                List.of(part("pad-10", "pad", "1", MAKER_AND_US)),
                "promised 0.00 We do.",
                "hour 192.00 120 minutes, counted up to the next quarter hour. " + other,
                "pad-10 0.00 maker",
                "visit 35.00 " + other);
        check(
                VisitKind.CALL,
                0,
                60,
                999,
                Coverage.NONE,
                List.of(part("pad-10", "pad", "1", LAW)),
                "hour 96.00 60 minutes, counted up to the next quarter hour. " + other,
                "pad-10 0.00 law",
                "visit 35.00 " + other);
        check(
                VisitKind.CALL,
                0,
                60,
                30,
                Coverage.NONE,
                List.of(),
                "hour 96.00 60 minutes, counted up to the next quarter hour. Not covered by a plan.",
                "visit 35.00 Not covered by a plan.");
    }

    @Test
    void what_the_work_of_the_plan_used_up_is_no_other_work() {
        check(
                VisitKind.PLAN,
                75,
                20,
                ChargesTest.COMFORT,
                List.of(part("filter-16x25x1", "filter", "1", Warranty.OF_THE_PLAN), part("pad-10", "pad", "1", US)),
                "promised 0.00 Included in your plan Comfort.",
                "promised 0.00 No charge: labour and trip go with the part under guarantee.",
                "filter-16x25x1 0.00 Included: the plan gives 2 a term, 1 left before this.",
                "pad-10 0.00 us");
        check(
                VisitKind.PLAN,
                75,
                20,
                Coverage.NONE,
                List.of(part("pad-10", "pad", "1", Warranty.OF_THE_PLAN)),
                "promised 0.00 No charge.",
                "hour 48.00 20 minutes, counted up to the next quarter hour. Not covered by a plan.",
                "pad-10 24.95 Not covered by a plan.");
    }

    @Test
    void what_we_or_the_law_answer_for_costs_neither_part_nor_labour_nor_trip() {
        for (Warranty warranty : List.of(US, LAW)) {
            check(
                    VisitKind.CALL,
                    0,
                    60,
                    Coverage.NONE,
                    List.of(part("pad-10", "pad", "1", warranty)),
                    "promised 0.00 No charge: labour and trip go with the part under guarantee.",
                    "pad-10 0.00 " + warranty.reason().en());
        }
        check(
                VisitKind.EXTRA,
                0,
                0,
                Coverage.NONE,
                List.of(part("pad-10", "pad", "1", US), part("glycol", "glycol", "1", LAW)),
                "pad-10 0.00 us",
                "glycol 0.00 law");
        check(
                VisitKind.PLAN,
                75,
                20,
                ChargesTest.COMFORT,
                List.of(part("pad-10", "pad", "1", US)),
                "promised 0.00 Included in your plan Comfort.",
                "promised 0.00 No charge: labour and trip go with the part under guarantee.",
                "pad-10 0.00 us");
    }

    @Test
    void beside_other_work_the_labour_is_charged() {
        check(
                VisitKind.CALL,
                0,
                15,
                Coverage.NONE,
                List.of(part("pad-10", "pad", "1", US), part("glycol", "glycol", "1", Warranty.NONE)),
                "hour 24.00 15 minutes, counted up to the next quarter hour. Not covered by a plan.",
                "pad-10 0.00 us",
                "glycol 12.10 Not covered by a plan.",
                "visit 35.00 Not covered by a plan.");
    }

    @Test
    void a_warranty_comes_before_the_plan_and_uses_up_none_of_it() {
        check(
                VisitKind.PLAN,
                0,
                0,
                ChargesTest.COMFORT,
                List.of(
                        part("filter-16x25x1", "filter", "1", MAKER),
                        part("filter-16x25x1", "filter", "1", Warranty.NONE)),
                "filter-16x25x1 0.00 maker",
                "filter-16x25x1 0.00 Included: the plan gives 2 a term, 1 left before this.");
    }

    @Test
    void what_ended_is_said_before_why_it_is_charged() {
        check(
                VisitKind.PLAN,
                0,
                0,
                Coverage.NONE,
                List.of(part("pad-10", "pad", "1", ENDED)),
                "pad-10 24.95 It ended. Not covered by a plan.");
    }

    @Test
    void a_free_return_says_who_answers_for_its_part() {
        check(
                VisitKind.RETURN,
                0,
                30,
                Coverage.NONE,
                List.of(part("pad-10", "pad", "1", US), part("glycol", "glycol", "1", Warranty.NONE)),
                "promised 0.00 No charge: we came back for our own work.",
                "pad-10 0.00 us",
                "glycol 0.00 No charge: we came back for our own work.");
    }
}
