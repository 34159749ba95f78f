package changeover.contracts.agreements;

import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * An agreement whose customer must hear from us before it ends.
 *
 * @param home the address in one line
 * @param lastDay of the term
 * @param notice between which days the law of the place wants the offer to go out
 * @param renewalId the offer that was made; null while none was
 */
public record RenewalRow(
        UUID agreementId,
        int number,
        UUID homeId,
        String home,
        UUID signerId,
        String signer,
        Wording plan,
        Money price,
        LocalDate lastDay,
        NoticeWindow notice,
        Standing standing,
        @Nullable UUID renewalId) {

    public enum Standing {
        /** Inside its notice window: make the offer. */
        DUE,
        /** The last day of the notice has passed and no offer was made. */
        LATE,
        /** Offered; the customer's answer is awaited. */
        OFFERED
    }
}
