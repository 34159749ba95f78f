package changeover.billing.invoices;

import changeover.contracts.money.Money;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Documents got their numbers and will never change again; credit notes among them. */
public record InvoiceIssued(List<Issued> issued) {

    /** @param language en or fr */
    public record Issued(
            UUID invoiceId,
            UUID customerId,
            @Nullable UUID homeId,
            DocumentKind kind,
            String label,
            LocalDate day,
            Money total,
            String language) {}
}
