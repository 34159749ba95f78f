package changeover.billing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.bank.BankChecks;
import changeover.billing.estimates.EstimateChecks;
import changeover.billing.invoices.InvoiceChecks;
import changeover.billing.ledger.LedgerChecks;
import changeover.billing.payments.PaymentChecks;
import changeover.billing.reminders.ReminderChecks;
import changeover.contracts.tenants.Businesses;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.SQLException;

/** Everything that must hold of a business's money, whatever a test has done to it. */
@ApplicationScoped
public class BooksHold {

    @Inject
    AgroalDataSource datasource;

    @Inject
    Businesses businesses;

    /** Inside the business. */
    public void check() {
        try (var connection = datasource.getConnection()) {
            InvoiceChecks.all(connection).forEach(found -> assertEquals(0, found.bad(), found.name()));
            assertEquals(
                    0,
                    LedgerChecks.journal(connection, businesses.current().currency())
                            .bad(),
                    "journal");
            assertEquals(0, LedgerChecks.taxes(connection).bad(), "taxes");
            assertEquals(0, PaymentChecks.of(connection).bad(), "payments");
            assertEquals(0, PaymentChecks.refunds(connection).bad(), "refunds");
            assertEquals(0, PaymentChecks.documents(connection).bad(), "paid");
            assertEquals(0, BankChecks.of(connection).bad(), "bank");
            assertEquals(0, EstimateChecks.of(connection).bad(), "estimates");
            assertEquals(0, ReminderChecks.of(connection).bad(), "reminders");
        } catch (SQLException cause) {
            throw new IllegalStateException(cause);
        }
    }
}
