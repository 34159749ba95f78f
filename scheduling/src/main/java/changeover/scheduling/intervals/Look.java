package changeover.scheduling.intervals;

import java.time.LocalDate;

/** One record of somebody who looked at a filter or changed it. */
public record Look(LocalDate day, By by, What what) {

    /** Whose record it is. */
    public enum By {
        HOUSEHOLD,
        TECHNICIAN
    }

    /** What the record says. */
    public enum What {
        CLEAN,
        GREY,
        CHANGED_CLEAN,
        CHANGED_GREY,
        /** Changed, and nobody said how the old one looked. */
        CHANGED;

        boolean change() {
            return this == CHANGED_CLEAN || this == CHANGED_GREY || this == CHANGED;
        }

        boolean clean() {
            return this == CLEAN || this == CHANGED_CLEAN;
        }

        boolean grey() {
            return this == GREY || this == CHANGED_GREY;
        }
    }
}
