package changeover.scheduling.closeout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;

class ClosingDayTest {

    @Test
    void the_day_of_closing_is_ours_unless_the_device_says_the_appointed_day() {
        ClosingDay days = new ClosingDay(ZoneId.of("America/Toronto"), Instant.parse("2026-11-01T05:30:00Z"));
        LocalDate today = LocalDate.of(2026, 11, 1);
        LocalDate before = LocalDate.of(2026, 10, 30);
        LocalDate after = LocalDate.of(2026, 11, 3);
        assertEquals(today, days.of(Instant.parse("2031-01-01T00:00:00Z"), before));
        assertEquals(before, days.of(Instant.parse("2026-10-30T18:00:00Z"), before));
        assertEquals(today, days.of(Instant.parse("2026-11-03T18:00:00Z"), after), "not a day to come");
        assertEquals(today, days.of(Instant.parse("2026-10-30T18:00:00Z"), null));
    }
}
