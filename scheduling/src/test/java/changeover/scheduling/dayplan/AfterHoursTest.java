package changeover.scheduling.dayplan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.calendar.HolidayChoice;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;

class AfterHoursTest {

    private static final ZoneId ZONE = ZoneId.of("America/Toronto");
    private static final UUID IDA = new UUID(7, 7);
    private static final UUID RUFUS = new UUID(7, 8);

    /** Ida works the usual week, Rufus on Fridays from noon to eight; 2 February 2027 is a day the business is closed. */
    private static final Roster CREW = new Roster(
            "CA-ON",
            HolidayChoice.USUAL,
            List.of(IDA, RUFUS),
            Map.of(RUFUS, List.of(hours(DayOfWeek.FRIDAY, "12:00", "20:00"))),
            Set.of(LocalDate.of(2027, 2, 2)),
            Map.of());

    private static Roster.Hours hours(DayOfWeek weekday, String starts, String ends) {
        return new Roster.Hours(weekday, LocalTime.parse(starts), LocalTime.parse(ends));
    }

    private static void check(String arrived, String left, int afterHours) {
        assertEquals(
                afterHours,
                AfterHours.minutes(
                        LocalDateTime.parse(arrived).atZone(ZONE).toInstant(),
                        LocalDateTime.parse(left).atZone(ZONE).toInstant(),
                        ZONE,
                        CREW::open),
                arrived + " to " + left);
    }

    @Test
    void minutes_that_no_working_hour_covers_are_night_minutes() {
        check("2027-01-11T09:00", "2027-01-11T10:30", 0);
        check("2027-01-11T06:40", "2027-01-11T08:20", 80);
        check("2027-01-11T15:30", "2027-01-11T17:00", 60);
        check("2027-01-11T16:00", "2027-01-11T16:00", 0);
        check("2027-01-11T16:00", "2027-01-11T15:00", 0);
        check("2027-01-11T16:00:00", "2027-01-11T16:00:59", 0);
        check("2027-01-11T07:00", "2027-01-11T17:00", 120);
    }

    @Test
    void a_stay_over_midnight_and_over_days_counts_each_days_own_hours() {
        check("2027-01-11T22:30", "2027-01-12T01:15", 165);
        check("2027-01-11T15:00", "2027-01-12T09:00", 16 * 60);
        check("2027-01-16T10:00", "2027-01-16T11:00", 60);
        check("2027-01-15T23:00", "2027-01-18T08:30", 57 * 60);
    }

    @Test
    void hours_of_two_technicians_are_not_counted_twice() {
        check("2027-01-15T11:00", "2027-01-15T21:00", 60);
        check("2027-01-15T17:00", "2027-01-15T19:00", 0);
    }

    @Test
    void a_holiday_and_a_closed_day_have_no_working_hours() {
        check("2027-12-27T09:00", "2027-12-27T10:00", 0);
        check("2026-12-25T09:00", "2026-12-25T10:00", 60);
        check("2027-02-02T09:00", "2027-02-02T10:00", 60);
    }

    @Test
    void the_night_the_clock_changes_has_its_real_length() {
        check("2027-03-14T01:30", "2027-03-14T03:30", 60);
        check("2026-10-31T23:30", "2026-11-01T03:30", 5 * 60);
        check("2027-03-13T23:00", "2027-03-15T08:00", 32 * 60);
    }

    @Test
    void a_shop_without_technicians_has_the_usual_hours() {
        var alone = new Roster("CA-ON", HolidayChoice.USUAL, List.of(), Map.of(), Set.of(), Map.of());
        assertEquals(List.of(hours(DayOfWeek.MONDAY, "08:00", "16:00")), alone.open(LocalDate.of(2027, 1, 11)));
        assertEquals(List.of(), alone.open(LocalDate.of(2027, 1, 10)));
    }
}
