package changeover.contracts.calendar;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * A window is a run of whole days: its first day is in, its {@code until} is the first day that is out.
 *
 * <p>It holds at least one day. People are told {@link #last()}, tables and rules keep {@code until}.
 *
 * @param from first day, in
 * @param until day after the last, out
 */
public record Window(LocalDate from, LocalDate until) implements Comparable<Window> {

    public Window {
        if (!from.isBefore(until)) {
            throw new IllegalArgumentException("a window without a day: " + from + " until " + until);
        }
    }

    /** Both days in, as people say it: "from 1 April to 15 June". */
    public static Window ofDays(LocalDate first, LocalDate last) {
        return new Window(first, last.plusDays(1));
    }

    public static Window ofDay(LocalDate day) {
        return ofDays(day, day);
    }

    public LocalDate last() {
        return until.minusDays(1);
    }

    public long days() {
        return ChronoUnit.DAYS.between(from, until);
    }

    public boolean contains(LocalDate day) {
        return !day.isBefore(from) && day.isBefore(until);
    }

    public boolean meets(Window other) {
        return from.isBefore(other.until) && other.from.isBefore(until);
    }

    /** The days both have; empty when they have none in common. */
    public Optional<Window> common(Window other) {
        return meets(other)
                ? Optional.of(new Window(later(from, other.from), earlier(until, other.until)))
                : Optional.empty();
    }

    /** What is left of it from a day on; empty when it is over by then. */
    public Optional<Window> since(LocalDate day) {
        return day.isBefore(until) ? Optional.of(new Window(later(from, day), until)) : Optional.empty();
    }

    /** That day, or the first or last of the window where it is not in it. */
    public LocalDate nearest(LocalDate day) {
        return day.isBefore(until) ? later(from, day) : last();
    }

    /** The day in its middle, the earlier one when it has two. */
    public LocalDate middle() {
        return from.plusDays((days() - 1) / 2);
    }

    /** By deadline, then by opening. */
    @Override
    public int compareTo(Window other) {
        int byDeadline = until.compareTo(other.until);
        return byDeadline != 0 ? byDeadline : from.compareTo(other.from);
    }

    private static LocalDate later(LocalDate one, LocalDate other) {
        return one.isAfter(other) ? one : other;
    }

    private static LocalDate earlier(LocalDate one, LocalDate other) {
        return one.isBefore(other) ? one : other;
    }
}
