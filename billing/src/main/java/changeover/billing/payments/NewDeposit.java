package changeover.billing.payments;

import changeover.contracts.money.Money;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Money taken before the work, as noted by a person.
 *
 * @param homeId where the work will be done
 * @param agreementId what the work belongs to, where it does
 * @param callId the call that it answers; an estimate's own work names the home alone
 * @param words what it is for, as the receipt says it
 */
public record NewDeposit(
        UUID customerId,
        UUID homeId,
        @Nullable UUID agreementId,
        @Nullable UUID callId,
        LocalDate day,
        Way way,
        Money amount,
        @Nullable String reference,
        String words) {}
