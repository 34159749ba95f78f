package changeover.billing.writeoffs;

import changeover.billing.invoices.DocumentKind;
import changeover.billing.invoices.InvoiceIssued;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.util.List;
import java.util.UUID;

/** A credit note for a document that was given up takes the place of what was given up. */
@ApplicationScoped
class WhenInvoiceIssued {

    @Inject
    TakingBack takingBack;

    void takeBack(@Observes InvoiceIssued issued) {
        List<InvoiceIssued.Issued> credits = issued.issued().stream()
                .filter(one -> one.kind() == DocumentKind.CREDIT)
                .toList();
        if (!credits.isEmpty()) {
            List<UUID> ids =
                    credits.stream().map(InvoiceIssued.Issued::invoiceId).toList();
            takingBack.forCredits(ids, credits.getFirst().day());
        }
    }
}
