package changeover.billing.estimates;

import changeover.contracts.money.Money;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A question for more: to how much in all, before taxes, and for what.
 *
 * @param refused who said no and when; null while nobody did
 */
public record AskedMore(
        UUID id,
        UUID estimateId,
        Money whole,
        String words,
        LocalDate day,
        @Nullable Refused refused) {

    public record Refused(
            String byName, Instant at, @Nullable String words) {}
}
