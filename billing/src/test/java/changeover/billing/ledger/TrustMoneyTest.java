package changeover.billing.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.ABusiness;
import changeover.billing.invoices.Invoices;
import changeover.billing.payments.Deposits;
import changeover.billing.payments.NewDeposit;
import changeover.billing.payments.NewPayment;
import changeover.billing.payments.Payments;
import changeover.billing.payments.Undoing;
import changeover.billing.payments.Way;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Whatever came in for an agreement before its first visit is money in trust: payments and deposits alike. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class TrustMoneyTest {

    static final LocalDate DAY = ASoldPlan.FIRST;

    @Inject
    ABusiness business;

    @Inject
    ASoldPlan plans;

    @Inject
    Payments payments;

    @Inject
    Deposits deposits;

    @Inject
    Invoices invoices;

    @Inject
    TrustMoney trust;

    private String paid(UUID agreement) {
        return trust.of(agreement).map(held -> held.paid().decimal()).orElse("nothing");
    }

    private static Money money(String amount) {
        return Money.of(amount, "CAD");
    }

    /** One invoice for two homes' plans, 249.00 and 99.00, of which 100.00 came. */
    @Test
    void what_was_paid_of_one_invoice_for_two_plans_is_shared_by_their_lines() {
        business.in(business.quebec(), () -> {
            ASoldPlan.Sold one = waiting();
            ASoldPlan.Sold other = waiting();
            UUID invoice = plans.draft(one, DAY, 1, "249.00");
            UUID joined = plans.draft(other, DAY, 1, "99.00");
            business.execute("update invoice_line set invoice_id = '" + invoice + "', position = 2 where invoice_id = '"
                    + joined + "'");
            business.execute("delete from invoice where id = '" + joined + "'");
            business.execute("update invoice set subtotal_minor = 34800 where id = '" + invoice + "'");
            invoices.issue(invoice, DAY);
            payments.take(new NewPayment(one.customer(), DAY, Way.CHEQUE, money("100.00"), null, null, List.of()));
            assertEquals("71.55", paid(one.id()));
            assertEquals("28.45", paid(other.id()));
        });
    }

    private ASoldPlan.Sold waiting() {
        ASoldPlan.Sold sold = plans.of("Ida Roe", 0, 0);
        UUID visit = plans.visit(sold, "plan", 60, null);
        business.execute(
                "update visit set window_from = '2026-09-01', window_until = '2026-10-01' where id = '" + visit + "'");
        return sold;
    }

    @Test
    void a_deposit_is_held_until_it_is_applied_or_given_back_and_counts_once() {
        business.in(business.quebec(), () -> {
            ASoldPlan.Sold sold = plans.of("Ida Roe", 0, 0);
            UUID visit = plans.visit(sold, "plan", 60, null);
            business.execute("update visit set window_from = '2026-09-01', window_until = '2026-10-01' where id = '"
                    + visit + "'");
            assertEquals("0.00", paid(sold.id()));
            UUID deposit = deposits.take(new NewDeposit(
                    sold.customer(), sold.home(), sold.id(), null, DAY, Way.CARD, money("120.00"), "44", "Plan"));
            assertEquals("120.00", paid(sold.id()));
            UUID invoice = plans.invoiced(sold, DAY, 1, "249.00");
            deposits.apply(deposit, invoice, DAY, money("50.00"));
            assertEquals("120.00", paid(sold.id()), "applied is paid, the rest is held");
            deposits.giveBack(deposit, DAY, Way.CARD, money("20.00"), null);
            assertEquals("100.00", paid(sold.id()));
            UUID payment = payments.take(
                    new NewPayment(sold.customer(), DAY, Way.CHEQUE, money("86.29"), null, null, List.of()));
            assertEquals("186.29", paid(sold.id()));
            payments.undo(payment, Undoing.How.BOUNCED, DAY, "No funds");
            assertEquals("100.00", paid(sold.id()));
            plans.closed(sold, visit, DAY.plusDays(20), "done");
            business.execute("insert into visit_ending (visit_id, how, day) values ('" + visit + "', 'closed', '"
                    + DAY.plusDays(20) + "')");
            assertEquals("nothing", paid(sold.id()));
        });
    }
}
