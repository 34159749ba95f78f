package changeover.billing.documents;

import changeover.billing.invoices.DocumentKind;
import changeover.billing.invoices.InvoiceIssued;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;

/** Every issued invoice and credit note wants its paper. */
@ApplicationScoped
class WhenInvoiceIssued {

    @Inject
    Documents documents;

    void order(@Observes InvoiceIssued issued) {
        documents.order(issued.issued().stream()
                .map(one -> Wanted.of(paperOf(one.kind()), one.invoiceId()))
                .toList());
    }

    private static PaperKind paperOf(DocumentKind kind) {
        return kind == DocumentKind.CREDIT ? PaperKind.CREDIT : PaperKind.INVOICE;
    }
}
