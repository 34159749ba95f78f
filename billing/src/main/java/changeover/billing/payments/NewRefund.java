package changeover.billing.payments;

import changeover.contracts.money.Money;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Money given back, as noted by a person.
 *
 * @param amount what is handed over; in cash it may be the credit rounded to five cents
 */
public record NewRefund(
        UUID customerId,
        LocalDate day,
        Way way,
        Money amount,
        @Nullable String reference,
        @Nullable String note) {}
