package changeover.contracts.agreements;

import java.time.LocalDate;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** How an agreement stands on a day; computed from its rows, never stored. */
public enum AgreementState {
    /** Offered, and the offer still stands. */
    OFFERED,
    /** Offered, and nobody said yes in time. */
    LAPSED,
    /** Accepted; its term has not begun. */
    ACCEPTED,
    IN_FORCE,
    /** Ended before its term was over. */
    ENDED,
    /** Its term is over. */
    OVER;

    /**
     * @param validUntil last day on which a yes counts
     * @param accepted the day of the yes; null before it
     * @param endedOn first day on which it no longer holds; null when nobody ended it
     */
    static AgreementState on(
            LocalDate day,
            LocalDate validUntil,
            @Nullable LocalDate accepted,
            @Nullable LocalDate endedOn,
            LocalDate from,
            LocalDate until) {
        if (accepted == null) {
            return day.isAfter(validUntil) ? LAPSED : OFFERED;
        }
        if (endedOn != null && !day.isBefore(endedOn)) {
            return ENDED;
        }
        if (!day.isBefore(until)) {
            return OVER;
        }
        return day.isBefore(from) ? ACCEPTED : IN_FORCE;
    }

    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
