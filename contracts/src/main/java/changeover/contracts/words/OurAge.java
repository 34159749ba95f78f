package changeover.contracts.words;

import java.time.DateTimeException;
import java.time.LocalDate;

/** A day that a shop lives in or plans; one of another age is a slip of the hand, though a machine may be older. */
public final class OurAge {

    /** The first and the last year of what is written down. */
    public static final int FIRST = 1950;

    public static final int LAST = 2200;

    /** The first year in which a machine that still stands was installed. */
    public static final int OLDEST_MACHINE = 1900;

    private OurAge() {}

    /** A day like any other in its form, of a year that nobody means. */
    public static final class AnotherAge extends DateTimeException {

        private static final long serialVersionUID = 1;

        private final int first;

        AnotherAge(int first) {
            super("a day of another age");
            this.first = first;
        }

        /** The first year that it could be of. */
        public int first() {
            return first;
        }
    }

    /**
     * A day as {@code 2026-10-15}.
     *
     * @throws DateTimeException when it is none, {@link AnotherAge} when it is before 1950 or after 2200
     */
    public static LocalDate day(String text) {
        return from(FIRST, text);
    }

    /** The same for what may have been installed long before. */
    public static LocalDate installed(String text) {
        return from(OLDEST_MACHINE, text);
    }

    private static LocalDate from(int first, String text) {
        LocalDate day = LocalDate.parse(text);
        if (day.getYear() < first || day.getYear() > LAST) {
            throw new AnotherAge(first);
        }
        return day;
    }
}
