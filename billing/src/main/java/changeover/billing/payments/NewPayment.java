package changeover.billing.payments;

import changeover.contracts.money.Money;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Money that came in, as noted by a person.
 *
 * @param amount what was handed over; in cash it may be the total rounded to five cents
 * @param parts what it pays, in the person's words; empty lets it pay the oldest open documents first. What is left is
 *     kept as the customer's credit
 */
public record NewPayment(
        UUID customerId,
        LocalDate day,
        Way way,
        Money amount,
        @Nullable String reference,
        @Nullable String note,
        List<Part> parts) {

    public record Part(UUID invoiceId, Money amount) {}

    public NewPayment {
        parts = List.copyOf(parts);
    }
}
