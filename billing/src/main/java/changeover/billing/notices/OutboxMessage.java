package changeover.billing.notices;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A message as it stands in the outbox.
 *
 * @param attached how many papers go with it
 * @param missing how many of them are not made yet
 * @param withdrawnAt when it was seen that it is no longer true; it never leaves
 * @param lastError what the mail server said last, in its own words
 */
public record OutboxMessage(
        UUID id,
        String kind,
        UUID aboutId,
        int aboutVersion,
        @Nullable UUID customerId,
        @Nullable UUID homeId,
        Way way,
        String toName,
        @Nullable String toAddress,
        String toPostal,
        String language,
        String subject,
        String body,
        Instant writtenAt,
        int attempts,
        Instant nextTryAt,
        @Nullable String lastError,
        @Nullable Instant sentAt,
        @Nullable Instant printedAt,
        @Nullable UUID printedBy,
        @Nullable Instant withdrawnAt,
        int attached,
        int missing) {

    /** By mail, or on paper for somebody without a mail address. */
    public enum Way {
        MAIL,
        LETTER
    }

    /** Where it stands, for a list that people read. */
    public enum Standing {
        WAITS_FOR_PAPERS,
        TO_SEND,
        TRIES_AGAIN,
        SENT,
        TO_PRINT,
        PRINTED,
        WITHDRAWN
    }

    public Standing standing() {
        if (sentAt != null) {
            return Standing.SENT;
        }
        if (printedAt != null) {
            return Standing.PRINTED;
        }
        if (withdrawnAt != null) {
            return Standing.WITHDRAWN;
        }
        if (missing > 0) {
            return Standing.WAITS_FOR_PAPERS;
        }
        if (way == Way.LETTER) {
            return Standing.TO_PRINT;
        }
        return lastError == null ? Standing.TO_SEND : Standing.TRIES_AGAIN;
    }
}
