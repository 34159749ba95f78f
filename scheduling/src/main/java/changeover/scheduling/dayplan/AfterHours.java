package changeover.scheduling.dayplan;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/**
 * A minute at a home is an after-hours minute when no working hour of the business covers it: at night, on a day off, on a
 * holiday. Hours stand on the wall's clock, minutes pass in real time, so the night the clock changes has its own length.
 */
public final class AfterHours {

    private record Span(Instant from, Instant until) {}

    private AfterHours() {}

    /**
     * Whole minutes of the stay that lie outside the working hours, begun minutes not counted.
     *
     * @param open the working hours of a day; they may overlap, and there may be none
     */
    public static int minutes(
            Instant arrived, Instant left, ZoneId zone, Function<LocalDate, List<Roster.Hours>> open) {
        if (!arrived.isBefore(left)) {
            return 0;
        }
        var worked = new ArrayList<Span>();
        LocalDate.ofInstant(arrived, zone)
                .datesUntil(LocalDate.ofInstant(left, zone).plusDays(1))
                .forEach(day -> open.apply(day).stream()
                        .map(hours -> new Span(
                                later(arrived, instant(day, hours.starts(), zone)),
                                earlier(left, instant(day, hours.ends(), zone))))
                        .filter(span -> span.from().isBefore(span.until()))
                        .forEach(worked::add));
        Duration covered = Duration.ZERO;
        Instant counted = arrived;
        worked.sort(Comparator.comparing(Span::from));
        for (Span span : worked) {
            Instant from = later(counted, span.from());
            if (from.isBefore(span.until())) {
                covered = covered.plus(Duration.between(from, span.until()));
                counted = span.until();
            }
        }
        return Math.toIntExact(Duration.between(arrived, left).minus(covered).toMinutes());
    }

    private static Instant instant(LocalDate day, LocalTime time, ZoneId zone) {
        return day.atTime(time).atZone(zone).toInstant();
    }

    private static Instant later(Instant one, Instant other) {
        return one.isAfter(other) ? one : other;
    }

    private static Instant earlier(Instant one, Instant other) {
        return one.isBefore(other) ? one : other;
    }
}
