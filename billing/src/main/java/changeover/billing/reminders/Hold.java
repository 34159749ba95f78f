package changeover.billing.reminders;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Nobody is reminded of this while it holds.
 *
 * @param invoiceId the one document; null for everything of the customer
 * @param until the last day, in; null until somebody ends it
 * @param ended the day on which somebody did
 */
public record Hold(
        UUID id,
        UUID customerId,
        @Nullable UUID invoiceId,
        @Nullable String label,
        LocalDate day,
        Why kind,
        String why,
        @Nullable LocalDate until,
        @Nullable LocalDate ended) {

    /** Why somebody is not reminded: they dispute it, they promised a day, or the business waits. */
    public enum Why {
        DISPUTE,
        PROMISE,
        HOLD;

        public String code() {
            return name().toLowerCase(Locale.ROOT);
        }

        public static Optional<Why> of(String code) {
            return Arrays.stream(values())
                    .filter(one -> one.code().equals(code))
                    .findFirst();
        }
    }

    public boolean stands(LocalDate on) {
        return ended == null && (until == null || !on.isAfter(until));
    }
}
