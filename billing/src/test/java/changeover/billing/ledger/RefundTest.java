package changeover.billing.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.ledger.Promised.Earned;
import changeover.billing.ledger.Refund.Settled;
import changeover.billing.tax.ContractForm;
import changeover.billing.tax.DocumentTaxes;
import changeover.billing.tax.PropertyUse;
import changeover.billing.tax.ShippedTaxes;
import changeover.billing.tax.TaxLine;
import changeover.billing.tax.TaxTable;
import changeover.billing.tax.Taxable;
import changeover.billing.tax.Work;
import changeover.contracts.calendar.Term;
import changeover.contracts.money.Money;
import java.time.LocalDate;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

class RefundTest {

    private static final Currency CAD = Currency.getInstance("CAD");
    private static final LocalDate FIRST = LocalDate.of(2026, 4, 1);
    private static final LocalDate CANCELLED = LocalDate.of(2026, 8, 15);
    private static final Map<String, LocalDate> SPRING_DONE = Map.of("spring", LocalDate.of(2026, 5, 12));
    private static final Recognition PLAN = Recognition.of(
            money("249.00"),
            Term.ofYear(FIRST),
            List.of(
                    new Promised("spring", money("140.00"), Earned.WHEN_DONE),
                    new Promised("autumn", money("160.00"), Earned.WHEN_DONE),
                    new Promised("filters", money("40.00"), Earned.WHEN_DONE)),
            List.of());

    @Test
    void a_plan_of_249_cancelled_after_136_days() {
        Refund refund = refund(CANCELLED, SPRING_DONE, "249.00", "286.29", RefundPolicy.of("CA-QC", "", 136));
        settled(refund, RefundWay.PRO_RATA, "kept 92.78 credit 156.22 taxes 7.81 15.59 total 179.62 back 179.62");
        settled(refund, RefundWay.WORK_DONE, "kept 102.53 credit 146.47 taxes 7.32 14.61 total 168.40 back 168.40");
        settled(
                refund,
                RefundWay.PRO_RATA_LESS_WORK,
                "kept 195.31 credit 53.69 taxes 2.68 5.36 total 61.73 back 61.73");
        assertEquals(RefundWay.PRO_RATA, refund.chosen().way());
    }

    @Test
    void in_quebec_the_customer_gets_the_larger_of_time_and_work() {
        Refund nothingDone = refund(CANCELLED, Map.of(), "249.00", "286.29", RefundPolicy.of("CA-QC", "", 136));
        assertEquals(RefundWay.WORK_DONE, nothingDone.chosen().way());
        settled(nothingDone, RefundWay.WORK_DONE, "kept 0.00 credit 249.00 taxes 12.45 24.84 total 286.29 back 286.29");
    }

    @Test
    void what_was_not_paid_is_not_paid_out_and_what_was_not_billed_is_still_to_bill() {
        Refund unpaid = refund(CANCELLED, SPRING_DONE, "249.00", "0.00", RefundPolicy.of("CA-QC", "", 136));
        assertEquals("0.00", unpaid.chosen().giveBack().decimal());
        assertEquals("106.67", unpaid.chosen().stillOwed().decimal());
        Refund aQuarter = refund(CANCELLED, SPRING_DONE, "62.25", "71.57", RefundPolicy.of("CA-QC", "", 136));
        assertEquals("0.00", aQuarter.chosen().creditTotal().decimal());
        assertEquals("30.53", aQuarter.chosen().stillToBill().decimal());
        assertEquals("0.00", aQuarter.chosen().giveBack().decimal());
    }

    @Test
    void a_tax_on_a_part_of_what_was_billed_is_not_guessed_at() {
        List<TaxLine> onAPart = taxes("CA-QC", money("100.00"));
        assertThrows(
                IllegalArgumentException.class,
                () -> new Cancelled(PLAN, CANCELLED, Map.of(), money("249.00"), onAPart, money("0.00")));
    }

    @Test
    void the_place_picks_the_way() {
        policy("CA-QC", "", 400, "qc-ccq-2129");
        policy("US-NY", "commercial-use", 136, "ny-gbl-395a-commercial");
        policy("US-NY", "moved", 136, "ny-gbl-395a-moved");
        policy("US-NY", "", 136, "own-terms");
        policy("FR", "", 14, "eu-withdrawal-14");
        policy("FR-75", "", 0, "eu-withdrawal-14");
        policy("FR", "", 15, "own-terms");
        policy("FRX", "", 1, "own-terms");
        policy("CA-ON", "", 136, "own-terms");
        assertEquals(
                RefundWay.PRO_RATA_LESS_WORK,
                refund(CANCELLED, SPRING_DONE, "249.00", "249.00", RefundPolicy.of("US-NY", "commercial-use", 136))
                        .chosen()
                        .way());
    }

    private static void policy(String place, String why, long days, String rule) {
        RefundPolicy policy = RefundPolicy.of(place, why, days);
        assertEquals(rule, policy.rule());
        assertTrue(policy.source().length() > 20);
    }

    /** Court of Justice of the European Union, C-641/19 (8 October 2020): 4 of 365 days of 523.95 euros, not 392.96. */
    @Test
    void four_days_of_a_year_cost_four_days_of_a_year() {
        Money price = Money.of("523.95", "EUR");
        Recognition plan = Recognition.of(
                price, Term.ofYear(FIRST), List.of(new Promised("year", price, Earned.BY_DAY)), List.of());
        Refund refund = Refund.of(
                new Cancelled(plan, FIRST.plusDays(4), Map.of(), price, List.of(), price),
                RefundPolicy.of("DE", "", 4));
        assertEquals("5.74", refund.chosen().kept().decimal());
        assertEquals("518.21", refund.chosen().giveBack().decimal());
    }

    @Test
    void no_refund_is_below_nought_above_what_was_paid_or_out_of_balance() {
        long seed = Long.getLong("changeover.seed", System.nanoTime());
        System.out.println("refund seed=" + seed);
        Random random = new Random(seed);
        int cases = Boolean.getBoolean("changeover.deep") ? 50_000 : 2_000;
        List<String> regions = List.of("CA-QC", "CA-ON", "CA-NS");
        for (int at = 0; at < cases; at++) {
            Recognition plan = RecognitionTest.plan(random);
            Money billed = random.nextBoolean()
                    ? plan.price()
                    : plan.price().fraction(random.nextInt(5), 4L + random.nextInt(2));
            billed = billed.compareTo(plan.price()) > 0 ? plan.price() : billed;
            List<TaxLine> taxes = taxes(regions.get(random.nextInt(3)), billed);
            Money due =
                    Money.sum(taxes.stream().map(TaxLine::amount).toList(), CAD).plus(billed);
            Money paid = random.nextBoolean() ? due : due.fraction(random.nextInt(4), 3);
            Map<String, LocalDate> done = new HashMap<>();
            plan.shares().stream()
                    .filter(share -> share.promised().earned() == Earned.WHEN_DONE && random.nextBoolean())
                    .forEach(share -> done.put(share.promised().name(), RecognitionTest.within(plan.term(), random)));
            RefundPolicy policy = RefundPolicy.of("CA-QC", "", 99);
            Refund before = null;
            for (long day = -3; day <= plan.term().days() + 3; day += 1 + random.nextInt(60)) {
                Refund refund = Refund.of(
                        new Cancelled(plan, plan.term().from().plusDays(day), done, billed, taxes, paid), policy);
                for (Settled way : refund.ways()) {
                    balanced(plan, billed, due, paid, way);
                    assertTrue(!policy.ways().contains(way.way())
                            || way.kept().compareTo(refund.chosen().kept()) >= 0);
                }
                if (before != null) {
                    for (int index = 0; index < before.ways().size(); index++) {
                        assertTrue(
                                refund.ways()
                                                .get(index)
                                                .credit()
                                                .compareTo(
                                                        before.ways().get(index).credit())
                                        <= 0,
                                "a later day gives back more: " + plan);
                    }
                }
                before = refund;
            }
        }
    }

    private static void balanced(Recognition plan, Money billed, Money due, Money paid, Settled way) {
        assertTrue(!way.kept().isNegative() && way.kept().compareTo(plan.price()) <= 0, way.toString());
        assertTrue(!way.credit().isNegative() && !way.giveBack().isNegative(), way.toString());
        assertTrue(way.giveBack().compareTo(paid) <= 0, way.toString());
        assertEquals(billed.plus(way.stillToBill()), way.kept().plus(way.credit()));
        assertEquals(due.minus(way.creditTotal()), paid.minus(way.giveBack()).plus(way.stillOwed()));
        way.taxes().forEach(tax -> {
            assertTrue(!tax.amount().isNegative(), way.toString());
            assertTrue(tax.amount().compareTo(tax.charged().amount()) <= 0, way.toString());
            assertEquals(
                    billed.minus(way.credit()).percent(tax.charged().tax().percent()),
                    tax.charged().amount().minus(tax.amount()),
                    "the tax left is the tax on what is left");
        });
    }

    private static Refund refund(
            LocalDate day, Map<String, LocalDate> done, String billed, String paid, RefundPolicy policy) {
        Money net = money(billed);
        return Refund.of(new Cancelled(PLAN, day, done, net, taxes("CA-QC", net), money(paid)), policy);
    }

    private static void settled(Refund refund, RefundWay way, String expected) {
        Settled settled = refund.ways().stream()
                .filter(one -> one.way() == way)
                .findFirst()
                .orElseThrow();
        assertEquals(
                expected,
                "kept " + settled.kept().decimal() + " credit "
                        + settled.credit().decimal() + " taxes "
                        + settled.taxes().getFirst().amount().decimal() + " "
                        + settled.taxes().getLast().amount().decimal() + " total "
                        + settled.creditTotal().decimal() + " back "
                        + settled.giveBack().decimal());
    }

    private static List<TaxLine> taxes(String region, Money net) {
        Taxable line = new Taxable(1, region, PropertyUse.RESIDENTIAL, Work.MAINTENANCE, ContractForm.PLAN, net);
        return ((DocumentTaxes.Computed)
                        DocumentTaxes.of(List.of(line), FIRST, new TaxTable(ShippedTaxes.rows(), List.of()), false))
                .lines();
    }

    private static Money money(String amount) {
        return Money.of(amount, "CAD");
    }
}
