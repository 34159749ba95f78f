package changeover.scheduling.dayplan;

import changeover.contracts.calendar.HolidayChoice;
import changeover.contracts.calendar.Holidays;
import changeover.contracts.calendar.Window;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Stream;

/**
 * When each technician works: their own hours of the week, save the holidays of the place, the days the business is
 * closed and their own days off. Whoever has written no hours works from Monday to Friday, eight to four.
 *
 * @param place ISO 3166-2, {@code CA-QC}
 * @param holidays which of the place's the business keeps
 */
public record Roster(
        String place,
        HolidayChoice holidays,
        List<UUID> technicians,
        Map<UUID, List<Hours>> hours,
        Set<LocalDate> closed,
        Map<UUID, Set<LocalDate>> off) {

    private static final LocalTime EIGHT = LocalTime.of(8, 0);
    private static final LocalTime FOUR = LocalTime.of(16, 0);

    public static final List<Hours> USUAL = Stream.of(DayOfWeek.values())
            .filter(weekday -> weekday.compareTo(DayOfWeek.FRIDAY) <= 0)
            .map(weekday -> new Hours(weekday, EIGHT, FOUR))
            .toList();

    public record Hours(DayOfWeek weekday, LocalTime starts, LocalTime ends) {

        public int minutes() {
            return Math.toIntExact(Duration.between(starts, ends).toMinutes());
        }
    }

    /** The technician's hours on that day; empty when they do not work. */
    public Optional<Hours> on(UUID technician, LocalDate day) {
        if (closed.contains(day) || off.getOrDefault(technician, Set.of()).contains(day) || isHoliday(day)) {
            return Optional.empty();
        }
        return hours.getOrDefault(technician, USUAL).stream()
                .filter(one -> one.weekday() == day.getDayOfWeek())
                .findFirst();
    }

    public boolean isHoliday(LocalDate day) {
        return Holidays.isHoliday(place, day, holidays);
    }

    /** The hours in which somebody of the business works that day; the usual ones where nobody is a technician. */
    public List<Hours> open(LocalDate day) {
        List<UUID> crew = technicians.isEmpty() ? List.of(new UUID(0, 0)) : technicians;
        return crew.stream().flatMap(technician -> on(technician, day).stream()).toList();
    }

    /** Minutes of work of all technicians together, by day. */
    public Map<LocalDate, Integer> minutes(Window window) {
        var minutes = new TreeMap<LocalDate, Integer>();
        window.from()
                .datesUntil(window.until())
                .forEach(day -> minutes.put(
                        day,
                        technicians.stream()
                                .flatMap(technician -> on(technician, day).stream())
                                .mapToInt(Hours::minutes)
                                .sum()));
        return minutes;
    }
}
