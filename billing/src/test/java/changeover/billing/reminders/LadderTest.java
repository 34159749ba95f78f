package changeover.billing.reminders;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class LadderTest {

    private final Ladder ladder = new Ladder(Step.usual());

    private void check(long late, int asked, long since, int expected) {
        assertEquals(
                expected,
                ladder.due(late, asked, since).map(Step::daysLate).orElse(0),
                late + " days late, " + asked + " asked " + since + " days ago");
    }

    @Test
    void each_step_once_from_the_first_on() {
        check(6, 0, 0, 0);
        check(7, 0, 0, 7);
        check(20, 0, 0, 7);
        check(8, 7, 1, 0);
        check(21, 7, 14, 21);
        check(45, 21, 24, 45);
        check(400, 45, 355, 0);
        // A ladder that begins late sends one letter, the first.
        check(400, 0, 0, 7);
        check(400, 7, 13, 0);
        check(400, 7, 14, 21);
        check(400, 21, 23, 0);
        // Whoever got the first step late is not sent the second the day after.
        check(22, 7, 2, 0);
        check(33, 7, 14, 21);
    }
}
