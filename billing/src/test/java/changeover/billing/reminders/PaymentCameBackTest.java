package changeover.billing.reminders;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.ABusiness;
import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.Invoices;
import changeover.billing.invoices.SomeDrafts;
import changeover.billing.payments.NewPayment;
import changeover.billing.payments.Payments;
import changeover.billing.payments.Undoing;
import changeover.billing.payments.Way;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Today;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class PaymentCameBackTest {

    @Inject
    ABusiness business;

    @Inject
    Drafts drafts;

    @Inject
    Invoices invoices;

    @Inject
    Payments payments;

    @Inject
    Ladders ladders;

    @Inject
    DueReminders due;

    @Inject
    Today today;

    /** Issued so long ago that it is so many days late today; its terms are thirty days. */
    private UUID late(UUID customer, int days, String net) {
        LocalDate issued = today.day().minusDays(30L + days);
        UUID id = drafts.write(List.of(SomeDrafts.on(issued, customer, business.home(customer, "QC"), net)))
                .getFirst();
        invoices.issue(id, issued);
        return id;
    }

    /** The bank says no today: that is no day for the last letter, and the first comes when its days have gone by again. */
    @Test
    void a_payment_that_came_back_begins_the_days_anew() {
        business.in(business.quebec(), () -> {
            Step.usual().forEach(ladders::keep);
            UUID ida = business.customer("Ida Roe", "en", "each");
            late(ida, 60, "100.00");
            UUID cheque = payments.take(new NewPayment(
                    ida, today.day().minusDays(60), Way.CHEQUE, Money.of("114.98", "CAD"), null, null, List.of()));
            payments.undo(cheque, Undoing.How.BOUNCED, today.day(), "No funds");
            assertEquals(List.of(), due.on(today.day()));
            int first = Step.usual().stream().mapToInt(Step::daysLate).min().orElseThrow();
            assertEquals(List.of(), due.on(today.day().plusDays(first - 1L)));
            assertEquals(
                    first, due.on(today.day().plusDays(first)).getFirst().step().daysLate());
        });
    }
}
