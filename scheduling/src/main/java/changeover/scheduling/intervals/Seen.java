package changeover.scheduling.intervals;

/**
 * What was seen of one filter, in days since it was put in: that it had just turned grey, that it turned grey between two
 * looks, or that it was still clean when it was last looked at or taken out.
 */
public sealed interface Seen {

    /** The longest time anybody can have seen: a hundred years. */
    double LONGEST_DAYS = 36_525;

    /** The shortest: a second, so that a logarithm of it stays a number. */
    double SHORTEST_DAYS = 1.0 / 86_400;

    /** It turned grey on that day. */
    record GreyAt(double days) implements Seen {
        public GreyAt {
            check(days);
        }
    }

    /**
     * It was clean at one look and grey at the next.
     *
     * @param cleanDays the last look that found it clean; 0 when the first look found it grey
     */
    record GreyBetween(double cleanDays, double greyDays) implements Seen {
        public GreyBetween {
            check(greyDays);
            if (cleanDays != 0) {
                check(cleanDays);
            }
            if (cleanDays >= greyDays) {
                throw new IllegalArgumentException("A filter must be seen clean before it is seen grey, not after.");
            }
        }
    }

    /** It was still clean then; nobody saw it later. */
    record CleanAt(double days) implements Seen {
        public CleanAt {
            check(days);
        }
    }

    /** The latest time this says something of. */
    default double lastDays() {
        return switch (this) {
            case GreyAt(double days) -> days;
            case GreyBetween(double _, double greyDays) -> greyDays;
            case CleanAt(double days) -> days;
        };
    }

    /** The earliest time above nought that this says something of. */
    default double firstDays() {
        return switch (this) {
            case GreyAt(double days) -> days;
            case GreyBetween(double cleanDays, double greyDays) -> cleanDays == 0 ? greyDays : cleanDays;
            case CleanAt(double days) -> days;
        };
    }

    private static void check(double days) {
        if (!(days >= SHORTEST_DAYS && days <= LONGEST_DAYS)) {
            throw new IllegalArgumentException(
                    "A time must be above nought and at most a hundred years, not " + days + " days.");
        }
    }
}
