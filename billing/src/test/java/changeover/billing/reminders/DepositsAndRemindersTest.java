package changeover.billing.reminders;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.ABusiness;
import changeover.billing.documents.DocumentsToMake;
import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.Invoices;
import changeover.billing.invoices.SomeDrafts;
import changeover.billing.notices.LettersToPrint;
import changeover.billing.notices.Outbox;
import changeover.billing.payments.Deposits;
import changeover.billing.payments.NewDeposit;
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

/** A deposit is kept for its own work: whoever is late with something else is reminded all the same. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class DepositsAndRemindersTest {

    @Inject
    ABusiness business;

    @Inject
    Drafts drafts;

    @Inject
    Invoices invoices;

    @Inject
    Deposits deposits;

    @Inject
    Ladders ladders;

    @Inject
    DueReminders due;

    @Inject
    Reminders reminders;

    @Inject
    DocumentsToMake papers;

    @Inject
    LettersToPrint letters;

    @Inject
    Outbox outbox;

    @Inject
    Today today;

    @Test
    void a_deposit_keeps_no_reminder_back_and_lets_it_leave() {
        UUID tenant = business.quebec();
        UUID customer = business.in(tenant, () -> {
            Step.usual().forEach(ladders::keep);
            UUID one = business.customer("Ida Roe");
            UUID home = business.home(one, "QC");
            LocalDate issued = today.day().minusDays(39);
            invoices.issue(
                    drafts.write(List.of(SomeDrafts.on(issued, one, home, "100.00")))
                            .getFirst(),
                    issued);
            Money deposit = Money.of("500.00", "CAD");
            deposits.take(
                    new NewDeposit(one, home, null, null, today.day(), Way.TRANSFER, deposit, null, "A new furnace"));
            assertEquals("114.98", due.on(today.day()).getFirst().total().decimal());
            assertEquals(1, reminders.write());
            return one;
        });
        papers.makePending(tenant, 10);
        business.in(tenant, () -> letters.batch());
        business.in(
                tenant,
                () -> outbox.to(customer).stream()
                        .filter(one -> one.kind().equals("reminder"))
                        .forEach(one -> assertEquals(null, one.withdrawnAt())));
    }
}
