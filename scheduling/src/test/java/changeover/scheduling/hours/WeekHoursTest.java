package changeover.scheduling.hours;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class WeekHoursTest {

    private static final LocalDate MONDAY = LocalDate.of(2026, 11, 23);

    private static WeekHours.Day day(int onSite, @Nullable String from, @Nullable String until, int corrected) {
        return new WeekHours.Day(
                MONDAY,
                1,
                onSite,
                from == null ? null : LocalTime.parse(from),
                until == null ? null : LocalTime.parse(until),
                corrected < 0 ? null : new WeekHours.Correction(corrected, "Drove to the lake"));
    }

    private static void check(int expected, WeekHours.Day day) {
        assertEquals(expected, day.minutes());
    }

    @Test
    void a_day_lasts_from_the_first_arrival_to_the_last_leaving_and_never_less_than_the_time_at_homes() {
        check(455, day(300, "08:05", "15:40", -1));
        check(300, day(300, "08:05", "08:30", -1));
        check(300, day(300, null, "15:40", -1));
        check(300, day(300, "08:05", null, -1));
        check(60, day(60, "23:30", "00:20", -1));
        check(480, day(300, "08:05", "15:40", 480));
        check(0, day(300, "08:05", "15:40", 0));
    }

    @Test
    void a_signature_stands_for_the_minutes_it_was_given_for() {
        var signed = new WeekHours.Signature(Instant.EPOCH, 455);
        var asSigned = new WeekHours(new UUID(0, 1), "Ida", MONDAY, List.of(day(300, "08:05", "15:40", -1)), signed);
        assertEquals(true, asSigned.isSigned());
        var corrected = new WeekHours(new UUID(0, 1), "Ida", MONDAY, List.of(day(300, "08:05", "15:40", 460)), signed);
        assertEquals(false, corrected.isSigned());
    }

    @Test
    void a_week_begins_on_its_monday() {
        for (int day = 0; day < 7; day++) {
            assertEquals(MONDAY, WeekHours.mondayOf(MONDAY.plusDays(day)));
        }
    }
}
