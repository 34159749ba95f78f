package changeover.scheduling.calls;

import java.time.Instant;
import java.util.Comparator;

/**
 * A call that nobody has answered comes before one whose visit is still to be; then the greater risk, then the earlier
 * promise, then who rang first.
 *
 * @param answered whether it became something already
 */
public record WaitingCall(boolean answered, Urgency urgency, Instant promisedBy, Instant rangAt) {

    public static final Comparator<WaitingCall> ORDER = Comparator.comparing(WaitingCall::answered)
            .thenComparing(WaitingCall::urgency)
            .thenComparing(WaitingCall::promisedBy)
            .thenComparing(WaitingCall::rangAt);

    /** Whether we said we would be there by now. */
    public boolean isLate(Instant now) {
        return promisedBy.isBefore(now);
    }
}
