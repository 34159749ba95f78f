package changeover.scheduling.calls;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Optional;
import java.util.function.Function;

/**
 * A plan answers within so many hours: of the clock, or of the hours in which somebody works here.
 *
 * @param nights whether the hours of nights and of days off count
 */
public record PlanAnswer(int hours, boolean nights) {

    /** Nobody works for longer than this at a stretch. */
    private static final int MOST_DAYS = 400;

    /** From when until when somebody works on a day. */
    public record Open(LocalTime from, LocalTime until) {}

    /**
     * By when we are there.
     *
     * @param open of a day; empty where nobody works on it
     */
    public Instant promise(Instant rangAt, ZoneId zone, Function<LocalDate, Optional<Open>> open) {
        Duration left = Duration.ofHours(hours);
        if (nights) {
            return rangAt.plus(left);
        }
        LocalDate first = LocalDate.ofInstant(rangAt, zone);
        for (LocalDate day = first; day.isBefore(first.plusDays(MOST_DAYS)); day = day.plusDays(1)) {
            Optional<Open> hoursOfIt = open.apply(day);
            if (hoursOfIt.isPresent()) {
                ZonedDateTime from = day.atTime(hoursOfIt.get().from()).atZone(zone);
                Instant begins = later(rangAt, from.toInstant());
                Instant ends = day.atTime(hoursOfIt.get().until()).atZone(zone).toInstant();
                Duration here = begins.isBefore(ends) ? Duration.between(begins, ends) : Duration.ZERO;
                if (here.compareTo(left) >= 0) {
                    return begins.plus(left);
                }
                left = left.minus(here);
            }
        }
        return rangAt.plus(Duration.ofHours(hours));
    }

    private static Instant later(Instant one, Instant other) {
        return one.isAfter(other) ? one : other;
    }
}
