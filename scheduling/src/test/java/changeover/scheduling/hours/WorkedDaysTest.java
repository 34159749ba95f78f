package changeover.scheduling.hours;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.scheduling.hours.WorkedDays.Visited;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class WorkedDaysTest {

    private static final ZoneId TORONTO = ZoneId.of("America/Toronto");

    /** @param from and until by the wall; null where nobody said */
    private static Visited visit(String day, int minutes, @Nullable String from, @Nullable String until) {
        return new Visited(LocalDate.parse(day), minutes, at(from), at(until));
    }

    private static @Nullable Instant at(@Nullable String wall) {
        return wall == null ? null : LocalDateTime.parse(wall).atZone(TORONTO).toInstant();
    }

    /** A day as {@code visits: from-until minutes, …}. */
    private static void check(Map<String, String> expected, Visited... visits) {
        Map<String, String> days = new TreeMap<>();
        new WorkedDays(TORONTO)
                .of(Arrays.asList(visits))
                .forEach((day, one) -> days.put(
                        day.toString(),
                        one.visits() + ": "
                                + one.stretches().stream()
                                        .map(each -> each.from() + "-" + each.until() + " " + each.minutes())
                                        .collect(Collectors.joining(", "))));
        assertEquals(expected, days);
    }

    @Test
    void a_call_past_midnight_stands_on_the_day_on_which_it_began() {
        check(
                Map.of("2027-01-12", "1: 23:35-00:40 65", "2027-01-13", "2: 08:00-16:30 510"),
                visit("2027-01-13", 60, "2027-01-12T23:35", "2027-01-13T00:40"),
                visit("2027-01-13", 90, "2027-01-13T08:00", "2027-01-13T11:30"),
                visit("2027-01-13", 90, "2027-01-13T13:00", "2027-01-13T16:30"));
    }

    @Test
    void the_rest_between_a_call_in_the_night_and_the_morning_is_not_worked() {
        check(
                Map.of("2027-01-13", "2: 02:00-03:00 60, 08:00-16:30 510"),
                visit("2027-01-13", 60, "2027-01-13T02:00", "2027-01-13T03:00"),
                visit("2027-01-13", 400, "2027-01-13T08:00", "2027-01-13T16:30"));
    }

    @Test
    void a_gap_of_three_hours_is_worked_and_a_longer_one_is_not() {
        check(
                Map.of("2027-01-13", "2: 08:00-13:00 300"),
                visit("2027-01-13", 60, "2027-01-13T08:00", "2027-01-13T09:00"),
                visit("2027-01-13", 60, "2027-01-13T12:00", "2027-01-13T13:00"));
        check(
                Map.of("2027-01-13", "2: 08:00-09:00 60, 12:01-13:00 59"),
                visit("2027-01-13", 60, "2027-01-13T08:00", "2027-01-13T09:00"),
                visit("2027-01-13", 59, "2027-01-13T12:01", "2027-01-13T13:00"));
    }

    @Test
    void in_the_nights_in_which_the_clocks_move_the_minutes_that_passed_count() {
        check(
                Map.of("2026-03-08", "1: 01:30-03:30 60"),
                visit("2026-03-08", 60, "2026-03-08T01:30", "2026-03-08T03:30"));
        check(
                Map.of("2026-11-01", "1: 00:30-02:30 180"),
                visit("2026-11-01", 180, "2026-11-01T00:30", "2026-11-01T02:30"));
    }

    @Test
    void what_nobody_said_is_not_made_up() {
        check(Map.of("2027-01-13", "1: "), visit("2027-01-13", 60, null, null));
        check(Map.of("2027-01-13", "1: 08:00-09:00 60"), visit("2027-01-13", 60, "2027-01-13T08:00", null));
        check(Map.of("2027-01-13", "1: 08:00-09:00 60"), visit("2027-01-13", 60, null, "2027-01-13T09:00"));
        check(
                Map.of("2027-01-12", "1: 14:00-15:00 60"),
                visit("2027-01-13", 60, "2027-01-12T14:00", "2027-01-13T08:00"));
        check(Map.of("2027-01-13", "1: "), visit("2027-01-13", 60, "2027-01-15T08:00", "2027-01-15T09:00"));
    }
}
