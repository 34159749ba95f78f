package changeover.scheduling.dayplan.standing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** How a business kept its word. */
class WordKeptTest {

    private static void check(WordKept counts, String expected) {
        assertEquals(
                expected,
                counts.judged() - counts.againstUs() + " of " + counts.judged() + ", " + counts.percent() + " %");
    }

    @Test
    void what_we_did_not_come_to_and_what_we_moved_count_against_us_a_closed_door_does_not() {
        check(new WordKept(0, 0, 0, 0, 0), "0 of 0, 100 %");
        check(new WordKept(10, 0, 0, 3, 2), "10 of 10, 100 %");
        check(new WordKept(9, 1, 0, 0, 0), "9 of 10, 90 %");
        check(new WordKept(9, 1, 2, 0, 0), "7 of 10, 70 %");
        check(new WordKept(199, 1, 0, 0, 0), "199 of 200, 99 %");
        check(new WordKept(0, 1, 0, 0, 5), "0 of 1, 0 %");
    }
}
