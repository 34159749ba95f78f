package changeover.contracts.catalogue;

import org.jspecify.annotations.Nullable;

/**
 * How long a visit may be: the bound that a business sets itself, or none. A single task that is longer has a visit of
 * its own.
 *
 * @param minutes on site, at most
 */
public record LongestVisit(int minutes) {

    /** A visit takes as long as its work. */
    public static final LongestVisit ANY = new LongestVisit(Integer.MAX_VALUE);

    public LongestVisit {
        if (minutes < 1) {
            throw new IllegalArgumentException("A visit needs at least a minute, not " + minutes + ".");
        }
    }

    public static LongestVisit of(@Nullable Integer minutes) {
        return minutes == null ? ANY : new LongestVisit(minutes);
    }

    public boolean isBounded() {
        return minutes < ANY.minutes;
    }

    /** Whether so many tasks of so many minutes together are one visit. */
    public boolean holds(int tasks, long together) {
        return tasks < 2 || together <= minutes;
    }
}
