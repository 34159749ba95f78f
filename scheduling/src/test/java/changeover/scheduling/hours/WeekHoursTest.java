package changeover.scheduling.hours;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

class WeekHoursTest {

    private static final LocalDate MONDAY = LocalDate.of(2026, 11, 23);

    private static WeekHours.Day day(int onSite, int worked, int corrected) {
        return new WeekHours.Day(
                MONDAY,
                1,
                onSite,
                worked == 0
                        ? List.of()
                        : List.of(new WeekHours.Stretch(
                                LocalTime.of(8, 0), LocalTime.of(8, 0).plusMinutes(worked), worked)),
                corrected < 0 ? null : new WeekHours.Correction(corrected, "Drove to the lake"));
    }

    private static void check(int expected, WeekHours.Day day) {
        assertEquals(expected, day.minutes());
    }

    @Test
    void a_day_is_what_its_stretches_say_and_never_less_than_the_time_at_homes() {
        check(455, day(300, 455, -1));
        check(300, day(300, 25, -1));
        check(300, day(300, 0, -1));
        check(480, day(300, 455, 480));
        check(0, day(300, 455, 0));
    }

    @Test
    void a_signature_stands_for_the_minutes_it_was_given_for() {
        var signed = new WeekHours.Signature(Instant.EPOCH, 455);
        var asSigned = new WeekHours(new UUID(0, 1), "Ida", MONDAY, List.of(day(300, 455, -1)), signed);
        assertEquals(true, asSigned.isSigned());
        var corrected = new WeekHours(new UUID(0, 1), "Ida", MONDAY, List.of(day(300, 455, 460)), signed);
        assertEquals(false, corrected.isSigned());
    }

    @Test
    void a_week_begins_on_its_monday() {
        for (int day = 0; day < 7; day++) {
            assertEquals(MONDAY, WeekHours.mondayOf(MONDAY.plusDays(day)));
        }
    }
}
