package changeover.scheduling.dayplan.season;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Locale;
import java.util.UUID;

/** A day of an answer that cannot be given any more: the visit waits for another. */
public record LeftOut(UUID visit, String home, LocalDate day, LocalTime starts, Why why) {

    /** What happened since the season was planned. */
    public enum Why {
        /** The hour is over. */
        PAST,
        /** Its days were moved, and this is none of them any more. */
        WINDOW_MOVED,
        /** The home is shut on that day. */
        HOME_SHUT,
        /** Somebody who would go works here no more by then. */
        LEFT,
        /** Somebody who would go does not work on that day. */
        DAY_OFF,
        /** The hour was given away meanwhile. */
        HOUR_TAKEN;

        public String code() {
            return name().toLowerCase(Locale.ROOT);
        }
    }
}
