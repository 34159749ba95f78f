package changeover.billing.payments;

import changeover.billing.invoices.DocumentKind;
import changeover.billing.invoices.InvoiceIssued;
import changeover.billing.invoices.PaidBefore;
import io.agroal.api.AgroalDataSource;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;

/**
 * What was paid of a document before is written down before anybody prints it. A credit note sets a deposit free at once: it is kept
 * for its work again, and is no credit that could go back beside it.
 */
@ApplicationScoped
class WhenInvoiceIssued {

    private static final int BEFORE_THE_PAPER = 10;

    @Inject
    Deposits deposits;

    @Inject
    AgroalDataSource datasource;

    void keepWhatWasPaid(@Observes @Priority(BEFORE_THE_PAPER) InvoiceIssued issued) {
        try (Connection connection = datasource.getConnection()) {
            PaidBefore.write(
                    connection,
                    issued.issued().stream()
                            .map(InvoiceIssued.Issued::invoiceId)
                            .toList());
        } catch (SQLException cause) {
            throw new IllegalStateException("what was paid before could not be written down", cause);
        }
    }

    void free(@Observes InvoiceIssued issued) {
        Map<UUID, LocalDate> credited = new TreeMap<>();
        issued.issued().stream()
                .filter(one -> one.kind() == DocumentKind.CREDIT)
                .forEach(one -> credited.put(one.customerId(), one.day()));
        if (!credited.isEmpty()) {
            deposits.free(credited);
        }
    }
}
