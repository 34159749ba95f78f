package changeover.contracts.calendar;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * The term of an agreement: its first day is in, {@code until} is the first day of what follows.
 *
 * <p>A term of twelve months from 29 February ends on 27 February: month steps are clipped to the month's end.
 *
 * @param from first day, in
 * @param until day after the last, out
 */
public record Term(LocalDate from, LocalDate until) {

    public Term {
        if (!from.isBefore(until)) {
            throw new IllegalArgumentException("a term without a day: " + from + " until " + until);
        }
    }

    public static Term ofMonths(LocalDate from, int months) {
        return new Term(from, from.plusMonths(months));
    }

    /** Twelve months from its first day. */
    public static Term ofYear(LocalDate from) {
        return ofMonths(from, 12);
    }

    public LocalDate last() {
        return until.minusDays(1);
    }

    public long days() {
        return ChronoUnit.DAYS.between(from, until);
    }

    /** Days of the term that are over when the given day begins, never below nought or above {@link #days()}. */
    public long elapsed(LocalDate day) {
        return Math.clamp(ChronoUnit.DAYS.between(from, day), 0, days());
    }

    public boolean contains(LocalDate day) {
        return !day.isBefore(from) && day.isBefore(until);
    }

    /** Whole months of the term, at least one; a term clipped to a month's end counts the month it was clipped from. */
    public int months() {
        long whole = ChronoUnit.MONTHS.between(from, until);
        boolean clipped = from.plusMonths(whole + 1).equals(until);
        return Math.toIntExact(Math.max(1, clipped ? whole + 1 : whole));
    }

    /** The term that begins where this one ends, of as many months. */
    public Term next() {
        return ofMonths(until, months());
    }

    public Window window() {
        return new Window(from, until);
    }
}
