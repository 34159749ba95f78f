package changeover.billing.payments;

import changeover.contracts.money.Money;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Money taken before the work and kept for it: owed to the customer until it is applied to an invoice or given back.
 *
 * @param paymentId the money as it came in
 * @param number of its receipt, one after the other
 * @param applied to invoices, less what a credit note has set free again
 * @param back given back
 * @param left what is still kept for the work; nought when the bank sent the money back
 */
public record Deposit(
        UUID id,
        UUID paymentId,
        long number,
        UUID customerId,
        String customer,
        UUID homeId,
        String street,
        @Nullable UUID agreementId,
        @Nullable UUID callId,
        LocalDate day,
        Way way,
        @Nullable String reference,
        String words,
        Money amount,
        Money applied,
        Money back,
        Money left) {}
