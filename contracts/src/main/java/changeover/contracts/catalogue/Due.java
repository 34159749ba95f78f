package changeover.contracts.catalogue;

import changeover.contracts.calendar.Window;
import java.time.LocalDate;

/**
 * One time that a task is promised: the days it may be done on, and the day it is best done on.
 *
 * @param window first day in, until out
 * @param on the day the household is told, inside the window
 */
public record Due(Window window, LocalDate on, Act act) {

    /** What is due: the task itself, a look, or the replacement that can wait no longer. */
    public enum Act {
        DO,
        CHECK,
        REPLACE
    }

    public Due {
        if (!window.contains(on)) {
            throw new IllegalArgumentException(on + " outside " + window);
        }
    }

    static Due within(Window window, LocalDate best) {
        LocalDate on = best.isBefore(window.from()) ? window.from() : best;
        return new Due(window, on.isBefore(window.until()) ? on : window.last(), Act.DO);
    }
}
