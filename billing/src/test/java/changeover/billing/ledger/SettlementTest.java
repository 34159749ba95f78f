package changeover.billing.ledger;

import static changeover.billing.ledger.ASoldPlan.FIRST;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.ABusiness;
import changeover.billing.BooksHold;
import changeover.billing.invoices.Invoices;
import changeover.billing.ledger.ASoldPlan.Sold;
import changeover.billing.payments.NewPayment;
import changeover.billing.payments.NewRefund;
import changeover.billing.payments.Owed;
import changeover.billing.payments.Payments;
import changeover.billing.payments.Refunds;
import changeover.billing.payments.Way;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import changeover.contracts.words.Refused;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * A plan of 249.00 that ends on 15 August, 136 of 365 days after its first: done visits, credit, taxes and instalments worked
 * through by hand. By days 249 × 136 / 365 = 92.78 is kept, by work the share of each visit done, 124.50; the tax that is left is
 * the tax on what is left: 4.64 and 9.25 on 92.78, 6.23 and 12.42 on 124.50, 10.86 and 21.67 on 217.28.
 */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class SettlementTest {

    static final LocalDate END = LocalDate.of(2026, 8, 15);

    @Inject
    ABusiness business;

    @Inject
    ASoldPlan plans;

    @Inject
    Settlements settlements;

    @Inject
    Invoices invoices;

    @Inject
    Payments payments;

    @Inject
    Refunds refunds;

    @Inject
    Owed owed;

    @Inject
    Earned earned;

    @Inject
    BooksHold books;

    private void pay(Sold sold, String amount) {
        payments.take(new NewPayment(
                sold.customer(), FIRST.plusDays(5), Way.CARD, Money.of(amount, "CAD"), null, null, List.of()));
    }

    private void check(Sold sold, String... expected) {
        assertEquals(
                List.of(expected), ASoldPlan.ways(settlements.of(sold.id(), END).orElseThrow()));
    }

    @Test
    void paid_at_once_with_the_spring_visit_done() {
        business.in(business.quebec(), () -> {
            Sold sold = plans.of("Ida Roe", 0, 0);
            UUID spring = plans.visit(sold, "plan", 60, null);
            plans.visit(sold, "plan", 60, null);
            plans.invoiced(sold, FIRST, 1, "249.00");
            pay(sold, "286.29");
            plans.closed(sold, spring, LocalDate.of(2026, 5, 4), "done");
            check(
                    sold,
                    "pro-rata* keep 92.78 credit 156.22 total 179.62 back 179.62 bill 0.00",
                    "work-done keep 124.50 credit 124.50 total 143.14 back 143.14 bill 0.00",
                    "pro-rata-less-work keep 217.28 credit 31.72 total 36.48 back 36.48 bill 0.00");
            assertEquals(
                    "settlement.not-ended",
                    assertThrows(
                                    Refused.class,
                                    () -> settlements.settle(sold.id(), RefundWay.PRO_RATA, END, "Moved away"))
                            .first()
                            .code());
            plans.ends(sold, END);
            UUID note = settlements
                    .settle(sold.id(), RefundWay.PRO_RATA, END, "Moved away")
                    .getFirst();
            invoices.issue(note, END);
            assertEquals("179.62", invoices.view(note).orElseThrow().total().decimal());
            check(
                    sold,
                    "pro-rata* keep 92.78 credit 0.00 total 0.00 back 179.62 bill 0.00",
                    "work-done keep 124.50 credit 0.00 total 0.00 back 179.62 bill 31.72",
                    "pro-rata-less-work keep 217.28 credit 0.00 total 0.00 back 179.62 bill 124.50");
            books.check();
            Money most = refunds.most(sold.customer(), END);
            assertEquals("179.62", most.decimal());
            refunds.give(new NewRefund(sold.customer(), END, Way.CARD, most, null, null));
            assertEquals("0.00", owed.of(sold.customer(), END).credit().decimal());
            EarnedOn.Plan plan = earned.on(END.plusDays(30)).plans().getFirst();
            assertEquals("92.78", plan.earned().ever().decimal());
            assertEquals("0.00", plan.prepaid().decimal());
            books.check();
        });
    }

    @Test
    void in_two_instalments_of_which_one_was_asked_for() {
        business.in(business.quebec(), () -> {
            Sold sold = plans.of("Ida Roe", 0, 0);
            plans.visit(sold, "plan", 60, null);
            plans.visit(sold, "plan", 60, null);
            plans.invoiced(sold, FIRST, 1, "124.50");
            UUID second = plans.draft(sold, FIRST.plusMonths(6), 2, "124.50");
            pay(sold, "143.15");
            plans.ends(sold, END);
            check(
                    sold,
                    "pro-rata keep 92.78 credit 31.72 total 36.48 back 36.48 bill 0.00",
                    "work-done* keep 0.00 credit 124.50 total 143.15 back 143.15 bill 0.00",
                    "pro-rata-less-work keep 92.78 credit 31.72 total 36.48 back 36.48 bill 0.00");
            assertEquals(
                    "2 124.50",
                    settlements.of(sold.id(), END).orElseThrow().waiting().stream()
                            .map(one -> one.instalment() + " " + one.net().decimal())
                            .collect(Collectors.joining(", ")));
            UUID note = settlements
                    .settle(sold.id(), RefundWay.PRO_RATA, END, "Moved away")
                    .getFirst();
            assertEquals(
                    "settlement.drafted",
                    assertThrows(
                                    Refused.class,
                                    () -> settlements.settle(sold.id(), RefundWay.PRO_RATA, END, "Moved away"))
                            .first()
                            .code());
            assertTrue(invoices.draft(second).isEmpty(), "the second instalment fell");
            invoices.issue(note, END);
            assertEquals("36.48", refunds.most(sold.customer(), END).decimal());
            EarnedOn.Plan plan = earned.on(END.plusDays(30)).plans().getFirst();
            assertEquals(
                    "92.78 of 92.78",
                    plan.earned().ever().decimal() + " of " + plan.invoiced().decimal());
            books.check();
        });
    }

    /** What the old plan gives back pays the new one: 286.29 less 179.62 is 106.67. */
    @Test
    void a_plan_is_changed_for_another() {
        business.in(business.quebec(), () -> {
            Sold old = plans.of("Ida Roe", 0, 0);
            plans.invoiced(old, FIRST, 1, "249.00");
            pay(old, "286.29");
            plans.ends(old, END);
            UUID note = settlements
                    .settle(old.id(), RefundWay.PRO_RATA, END, "Another plan")
                    .getFirst();
            invoices.issue(note, END);
            Sold other = plans.of("Ida Roe", 0, 0);
            Sold mine = new Sold(other.id(), old.home(), old.customer());
            plans.invoiced(mine, END, 1, "249.00");
            payments.settle(old.customer(), END);
            assertEquals("106.67", owed.of(old.customer(), END).open().decimal());
            assertEquals("0.00", owed.of(old.customer(), END).credit().decimal());
            books.check();
        });
    }
}
