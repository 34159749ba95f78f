package changeover.billing.ledger;

import static changeover.billing.ledger.ASoldPlan.FIRST;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import changeover.billing.ABusiness;
import changeover.billing.BooksHold;
import changeover.billing.invoices.Credits;
import changeover.billing.invoices.Invoices;
import changeover.billing.ledger.ASoldPlan.Sold;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import changeover.contracts.words.Refused;
import changeover.contracts.words.Wording;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/**
 * What a settlement keeps is earned from its day on, with or without a credit note; until then what was earned by the end. By hand: of
 * 249.00 a visit's share is 124.50, and 136 of 365 days are 92.78.
 */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class SettledEarningsTest {

    private static final LocalDate END = SettledInstalmentsTest.END;
    private static final LocalDate SETTLED = END.plusDays(5);

    @Inject
    ABusiness business;

    @Inject
    ASoldPlan plans;

    @Inject
    Settlements settlements;

    @Inject
    Invoices invoices;

    @Inject
    Credits credits;

    @Inject
    Earned earned;

    @Inject
    Journal journal;

    @Inject
    BooksHold books;

    private void check(LocalDate day, String expected) {
        EarnedOn.Plan plan = earned.on(day).plans().getFirst();
        assertEquals(
                expected,
                plan.earned().ever().decimal() + " of " + plan.invoiced().decimal() + ", prepaid "
                        + plan.prepaid().decimal() + ", ahead " + plan.ahead().decimal());
        long revenue = journal.of(new Period(FIRST, day)).stream()
                .flatMap(entry -> entry.postings().stream())
                .filter(one -> one.role().equals("revenue-plan"))
                .mapToLong(one -> one.amount().minor())
                .sum();
        assertEquals(plan.earned().ever().minor(), -revenue, "the journal says the same");
        books.check();
    }

    private List<UUID> settle(Sold sold, RefundWay way, LocalDate day) {
        return settlements.settle(sold.id(), way, day, "Moved away");
    }

    private void goodwill(UUID invoice, String amount, LocalDate day) {
        UUID note = credits.inPart(
                invoice, day, Map.of(1, Money.of(amount, "CAD")), new Wording("Goodwill.", "Geste commercial."));
        invoices.issue(note, day);
    }

    /** Twelve of 20.75, four asked for, one of two visits done: the fifth falls to 9.78 and nothing is credited. */
    @Test
    void a_settlement_without_a_credit_note_earns_what_is_kept() {
        business.in(business.quebec(), () -> {
            Sold sold = twoVisits(1);
            plans.instalments(sold);
            plans.ends(sold, END);
            check(SETTLED.minusDays(1), "124.50 of 83.00, prepaid 0.00, ahead 41.50");
            assertEquals(List.of(), settle(sold, RefundWay.PRO_RATA, SETTLED));
            check(SETTLED.minusDays(1), "124.50 of 83.00, prepaid 0.00, ahead 41.50");
            check(SETTLED, "92.78 of 83.00, prepaid 0.00, ahead 9.78");
            invoices.issue(
                    settlements
                            .of(sold.id(), END)
                            .orElseThrow()
                            .waiting()
                            .getFirst()
                            .id(),
                    SETTLED.plusDays(10));
            check(SETTLED.plusDays(30), "92.78 of 92.78, prepaid 0.00, ahead 0.00");
        });
    }

    /** The other way: no visit was done, and the days are kept all the same. */
    @Test
    void days_that_are_kept_are_earned_though_no_visit_was_done() {
        business.in(business.quebec(), () -> {
            Sold sold = twoVisits(0);
            plans.instalments(sold);
            plans.ends(sold, END);
            check(SETTLED, "0.00 of 83.00, prepaid 83.00, ahead 0.00");
            settle(sold, RefundWay.PRO_RATA, SETTLED);
            invoices.issue(
                    settlements
                            .of(sold.id(), END)
                            .orElseThrow()
                            .waiting()
                            .getFirst()
                            .id(),
                    SETTLED);
            check(SETTLED, "92.78 of 92.78, prepaid 0.00, ahead 0.00");
        });
    }

    /** 249.00 less 20.00 is 229.00, of which 92.78 is kept: 136.22 goes back. A later 10.00 lessens what was earned. */
    @Test
    void a_goodwill_credit_settles_nothing() {
        business.in(business.quebec(), () -> {
            Sold sold = twoVisits(0);
            UUID invoice = plans.invoiced(sold, FIRST, 1, "249.00");
            plans.ends(sold, END);
            goodwill(invoice, "20.00", END.plusDays(1));
            check(END.plusDays(1), "0.00 of 229.00, prepaid 229.00, ahead 0.00");
            UUID note = settle(sold, RefundWay.PRO_RATA, SETTLED).getFirst();
            check(SETTLED, "92.78 of 229.00, prepaid 136.22, ahead 0.00");
            invoices.issue(note, SETTLED.plusDays(2));
            check(SETTLED.plusDays(2), "92.78 of 92.78, prepaid 0.00, ahead 0.00");
            goodwill(invoice, "10.00", SETTLED.plusDays(9));
            check(SETTLED.plusDays(9), "82.78 of 82.78, prepaid 0.00, ahead 0.00");
            check(SETTLED.plusDays(8), "92.78 of 92.78, prepaid 0.00, ahead 0.00");
        });
    }

    /** What is kept was credited by hand to the cent before: settling says so, once. */
    @Test
    void what_is_billed_may_be_what_is_kept() {
        business.in(business.quebec(), () -> {
            Sold sold = twoVisits(0);
            UUID invoice = plans.invoiced(sold, FIRST, 1, "249.00");
            plans.ends(sold, END);
            goodwill(invoice, "156.22", END);
            check(END, "0.00 of 92.78, prepaid 92.78, ahead 0.00");
            assertEquals(List.of(), settle(sold, RefundWay.PRO_RATA, SETTLED));
            check(SETTLED, "92.78 of 92.78, prepaid 0.00, ahead 0.00");
            assertEquals(
                    "settlement.nothing",
                    assertThrows(Refused.class, () -> settle(sold, RefundWay.PRO_RATA, SETTLED))
                            .first()
                            .code());
        });
    }

    /** Settled anew on a later day with less kept, until then the first settlement holds: the visit of May is 124.50. */
    @Test
    void an_agreement_settled_once_more_keeps_what_the_last_settlement_says() {
        business.in(business.quebec(), () -> {
            Sold sold = twoVisits(1);
            plans.invoiced(sold, FIRST, 1, "249.00");
            plans.ends(sold, END);
            invoices.issue(settle(sold, RefundWay.WORK_DONE, SETTLED).getFirst(), SETTLED);
            check(SETTLED, "124.50 of 124.50, prepaid 0.00, ahead 0.00");
            invoices.issue(settle(sold, RefundWay.PRO_RATA, SETTLED.plusDays(3)).getFirst(), SETTLED.plusDays(3));
            check(SETTLED.plusDays(2), "124.50 of 124.50, prepaid 0.00, ahead 0.00");
            check(SETTLED.plusDays(3), "92.78 of 92.78, prepaid 0.00, ahead 0.00");
        });
    }

    /** Settled before the last day: what is kept is the most that the days before it earn, and nothing of it is earned twice. */
    @Test
    void a_settlement_before_the_end_earns_what_is_kept_by_the_end() {
        business.in(business.quebec(), () -> {
            Sold sold = twoVisits(1);
            plans.invoiced(sold, FIRST, 1, "249.00");
            plans.ends(sold, END);
            LocalDate before = END.minusDays(10);
            invoices.issue(settle(sold, RefundWay.PRO_RATA, before).getFirst(), before);
            check(before.minusDays(1), "124.50 of 249.00, prepaid 124.50, ahead 0.00");
            check(before, "92.78 of 92.78, prepaid 0.00, ahead 0.00");
            check(END, "92.78 of 92.78, prepaid 0.00, ahead 0.00");
        });
    }

    private Sold twoVisits(int done) {
        Sold sold = plans.of("Ida Roe", 0, 0);
        UUID spring = plans.visit(sold, "plan", 60, null);
        plans.visit(sold, "plan", 60, null);
        if (done > 0) {
            plans.closed(sold, spring, LocalDate.of(2026, 5, 4), "done");
        }
        return sold;
    }
}
