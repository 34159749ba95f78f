package changeover.scheduling.dayplan;

import java.time.LocalTime;

/** Hours of a day as minutes from midnight, and back. */
public final class Minutes {

    private Minutes() {}

    public static int of(LocalTime time) {
        return time.toSecondOfDay() / 60;
    }

    /** What lies beyond the day is its last minute. */
    public static LocalTime time(int minute) {
        return LocalTime.of(Math.min(23, minute / 60), minute >= 24 * 60 ? 59 : minute % 60);
    }
}
