package changeover.scheduling.dayplan.standing;

import changeover.scheduling.visits.VisitEnd;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * A visit's hour is proposed until the customer was told it, and confirmed from then on; under way once somebody has
 * arrived; then done, or nobody let us in, or we did not come.
 */
public enum HourState {
    WITHOUT_DAY,
    PROPOSED,
    CONFIRMED,
    UNDER_WAY,
    DONE,
    CANCELLED,
    NO_ACCESS,
    NOT_KEPT;

    /**
     * @param told whether the customer was told the hour that it has
     * @param begun whether somebody who is there has said anything yet
     * @param end how it ended; null while it is open
     */
    public static HourState of(boolean hasDay, boolean told, boolean begun, @Nullable VisitEnd end) {
        if (end != null) {
            return switch (end) {
                case CLOSED -> DONE;
                case CANCELLED -> CANCELLED;
                case NO_ACCESS -> NO_ACCESS;
                case NOT_KEPT -> NOT_KEPT;
            };
        }
        if (begun) {
            return UNDER_WAY;
        }
        if (!hasDay) {
            return WITHOUT_DAY;
        }
        return told ? CONFIRMED : PROPOSED;
    }

    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
