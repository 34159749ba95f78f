package changeover.billing.payments;

import changeover.contracts.money.Money;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/**
 * Money came in.
 *
 * @param amount that counts against documents, without the rounding of cash
 * @param credit what of it pays no document yet and is kept for the customer
 */
public record PaymentTaken(
        UUID paymentId, UUID customerId, LocalDate day, Money amount, Money credit, List<Allocated> allocated) {

    public record Allocated(UUID invoiceId, Money amount) {}
}
