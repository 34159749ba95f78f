package changeover.scheduling.intervals;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

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

        /**
         * @param found {@code clean} or {@code grey}; null when nobody said
         * @throws IllegalArgumentException when nothing was said at all
         */
        public static What of(@Nullable String found, boolean changed) {
            if (found == null && !changed) {
                throw new IllegalArgumentException("a look that says nothing");
            }
            if (found == null) {
                return CHANGED;
            }
            return found.equals("grey") ? changed ? CHANGED_GREY : GREY : changed ? CHANGED_CLEAN : CLEAN;
        }

        public boolean change() {
            return this == CHANGED_CLEAN || this == CHANGED_GREY || this == CHANGED;
        }

        public boolean clean() {
            return this == CLEAN || this == CHANGED_CLEAN;
        }

        public boolean grey() {
            return this == GREY || this == CHANGED_GREY;
        }
    }
}
