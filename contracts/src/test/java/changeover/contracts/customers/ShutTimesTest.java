package changeover.contracts.customers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.calendar.Window;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A visit promised from 1 to 30 September, to a home that is shut for some of these days. */
class ShutTimesTest {

    private static final Window SEPTEMBER = days(1, 30);

    private static Window days(int first, int last) {
        return Window.ofDays(
                LocalDate.of(2026, 8, 31).plusDays(first),
                LocalDate.of(2026, 8, 31).plusDays(last));
    }

    private static void check(Optional<Window> expected, Window... shut) {
        assertEquals(expected, new ShutTimes(Arrays.asList(shut)).longestOpen(SEPTEMBER));
    }

    @Test
    void what_is_left_is_the_longest_run_of_open_days() {
        check(Optional.of(SEPTEMBER));
        check(Optional.of(SEPTEMBER), days(31, 60));
        check(Optional.of(SEPTEMBER), days(-20, 0));
        check(Optional.of(days(11, 30)), days(-5, 10));
        check(Optional.of(days(1, 19)), days(20, 200));
        check(Optional.of(days(1, 14)), days(15, 18));
        check(Optional.of(days(11, 30)), days(8, 10));
        check(Optional.of(days(11, 20)), days(21, 24), days(1, 10), days(26, 30));
        check(Optional.of(days(1, 10)), days(11, 20), days(12, 15));
        check(Optional.empty(), days(1, 30));
        check(Optional.empty(), days(-3, 12), days(10, 40));
    }

    @Test
    void a_home_is_shut_on_its_first_day_and_open_on_the_day_it_opens() {
        var times = new ShutTimes(Arrays.asList(days(5, 9)));
        assertFalse(times.on(days(4, 4).from()));
        assertTrue(times.on(days(5, 5).from()));
        assertTrue(times.on(days(9, 9).from()));
        assertFalse(times.on(days(10, 10).from()));
    }
}
