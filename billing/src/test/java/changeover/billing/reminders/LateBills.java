package changeover.billing.reminders;

import changeover.billing.ABusiness;
import changeover.billing.documents.DocumentsToMake;
import changeover.billing.fees.Fees;
import changeover.billing.invoices.Credits;
import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.Invoices;
import changeover.billing.invoices.SomeDrafts;
import changeover.billing.notices.LettersToPrint;
import changeover.billing.notices.Outbox;
import changeover.billing.notices.OutboxMessage;
import changeover.billing.payments.NewPayment;
import changeover.billing.payments.Payments;
import changeover.billing.payments.Refunds;
import changeover.billing.payments.Way;
import changeover.contracts.calendar.DayPassed;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Wording;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** Customers of a business with bills that are late, and what is written to them. */
abstract class LateBills {

    @Inject
    ABusiness business;

    @Inject
    Drafts drafts;

    @Inject
    Invoices invoices;

    @Inject
    Credits credits;

    @Inject
    Payments payments;

    @Inject
    Refunds refunds;

    @Inject
    Ladders ladders;

    @Inject
    DueReminders due;

    @Inject
    Reminders reminders;

    @Inject
    RemindersSent sent;

    @Inject
    Holds holds;

    @Inject
    Fees fees;

    @Inject
    Outbox outbox;

    @Inject
    LettersToPrint letters;

    @Inject
    DocumentsToMake papers;

    @Inject
    Today today;

    @Inject
    Event<DayPassed> days;

    @Inject
    AgroalDataSource datasource;

    /** Issued so long ago that it is so many days late today; its terms are thirty days. */
    UUID late(UUID customer, int days, String net) {
        LocalDate issued = today.day().minusDays(30L + days);
        UUID id = drafts.write(List.of(SomeDrafts.on(issued, customer, business.home(customer, "QC"), net)))
                .getFirst();
        invoices.issue(id, issued);
        return id;
    }

    void pay(UUID customer, String amount) {
        payments.take(
                new NewPayment(customer, today.day(), Way.TRANSFER, Money.of(amount, "CAD"), null, null, List.of()));
    }

    List<OutboxMessage> written(UUID customer) {
        return outbox.to(customer).stream()
                .filter(one -> one.kind().equals("reminder"))
                .toList();
    }

    void credit(UUID invoice, String amount) {
        invoices.issue(
                credits.inPart(
                        invoice, today.day(), Map.of(1, Money.of(amount, "CAD")), new Wording("Moved.", "Déménagé.")),
                today.day());
    }

    long checked() {
        try (var connection = datasource.getConnection()) {
            return ReminderChecks.of(connection).bad();
        } catch (SQLException cause) {
            throw new IllegalStateException(cause);
        }
    }
}
