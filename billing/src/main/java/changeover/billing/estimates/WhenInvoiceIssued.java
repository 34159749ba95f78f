package changeover.billing.estimates;

import changeover.billing.invoices.DocumentKind;
import changeover.billing.invoices.InvoiceIssued;
import changeover.billing.payments.Deposits;
import changeover.contracts.tenants.Today;
import io.agroal.api.AgroalDataSource;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;

/** The deposit of an accepted estimate pays the invoice of its own work when that is issued. */
@ApplicationScoped
class WhenInvoiceIssued {

    /** Before what was paid of the document is written down for its paper. */
    private static final int BEFORE_ITS_PAPER = 5;

    @Inject
    AgroalDataSource datasource;

    @Inject
    DepositsOfWork work;

    @Inject
    Deposits deposits;

    @Inject
    Today today;

    void apply(@Observes @Priority(BEFORE_ITS_PAPER) InvoiceIssued issued) {
        Map<UUID, LocalDate> days = new HashMap<>();
        issued.issued().stream()
                .filter(one -> one.kind() == DocumentKind.VISIT && !one.day().isAfter(today.day()))
                .forEach(one -> days.put(one.invoiceId(), one.day()));
        if (days.isEmpty()) {
            return;
        }
        try (Connection connection = datasource.getConnection()) {
            for (DepositsOfWork.Kept one : work.kept(connection, days.keySet())) {
                LocalDate day = days.get(one.invoice());
                if (day != null && !day.isBefore(one.deposit().day())) {
                    deposits.useUp(one.deposit().id(), one.invoice(), day);
                }
            }
        } catch (SQLException cause) {
            throw new IllegalStateException("the deposits of the work could not be applied", cause);
        }
    }
}
