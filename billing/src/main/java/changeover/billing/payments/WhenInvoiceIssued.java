package changeover.billing.payments;

import changeover.billing.invoices.DocumentKind;
import changeover.billing.invoices.InvoiceIssued;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;

/** A credit note sets a deposit free at once: it is kept for its work again, and is no credit that could go back beside it. */
@ApplicationScoped
class WhenInvoiceIssued {

    @Inject
    Deposits deposits;

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
