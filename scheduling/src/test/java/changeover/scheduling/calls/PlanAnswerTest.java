package changeover.scheduling.calls;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class PlanAnswerTest {

    private static final ZoneId ZONE = ZoneId.of("America/Toronto");
    private static final Set<DayOfWeek> WEEKEND = Set.of(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY);

    /** Monday to Friday, eight to five; the eighteenth of January 2027 everybody is off. */
    private static Optional<PlanAnswer.Open> open(LocalDate day) {
        return WEEKEND.contains(day.getDayOfWeek()) || day.equals(LocalDate.of(2027, 1, 18))
                ? Optional.empty()
                : Optional.of(new PlanAnswer.Open(LocalTime.of(8, 0), LocalTime.of(17, 0)));
    }

    private static void check(String rang, int hours, boolean nights, String there) {
        Instant at = LocalDateTime.parse(rang).atZone(ZONE).toInstant();
        assertEquals(
                there,
                LocalDateTime.ofInstant(new PlanAnswer(hours, nights).promise(at, ZONE, PlanAnswerTest::open), ZONE)
                        .toString());
    }

    @Test
    void hours_of_the_clock_run_through_nights_and_over_a_change_of_the_clock() {
        check("2027-01-15T16:00", 24, true, "2027-01-16T16:00");
        check("2027-03-13T20:00", 12, true, "2027-03-14T09:00");
    }

    @Test
    void working_hours_stand_still_at_night_over_the_weekend_and_on_a_day_off() {
        check("2027-01-13T09:00", 4, false, "2027-01-13T13:00");
        check("2027-01-13T16:00", 4, false, "2027-01-14T11:00");
        check("2027-01-13T19:30", 4, false, "2027-01-14T12:00");
        check("2027-01-13T05:00", 9, false, "2027-01-13T17:00");
        check("2027-01-15T16:00", 4, false, "2027-01-19T11:00");
    }

    @Test
    void where_nobody_ever_works_the_clock_counts() {
        Instant at = Instant.parse("2027-01-13T12:00:00Z");
        assertEquals(
                Instant.parse("2027-01-13T16:00:00Z"),
                new PlanAnswer(4, false).promise(at, ZONE, _ -> Optional.empty()));
    }
}
