package changeover.scheduling.dayplan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import changeover.contracts.words.Refusal;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** A told hour moves for a reason only. */
class MovingTest {

    private static final Moving ASKED = new Moving(Moving.By.CUSTOMER, " They are away ");

    private static void check(boolean told, boolean anotherHour, @Nullable Moving moving, String expected) {
        assertEquals(
                expected,
                Moving.refusal(told, anotherHour, moving).map(Refusal::code).orElse("may"));
    }

    @Test
    void only_another_hour_than_the_one_that_was_told_asks_for_a_reason() {
        check(true, true, null, "appointment.told-moves-for-a-reason");
        check(true, true, ASKED, "may");
        check(true, false, null, "may");
        check(false, true, null, "may");
        check(false, false, null, "may");
    }

    @Test
    void a_reason_has_words_of_its_own() {
        assertEquals("They are away", ASKED.why());
        assertThrows(IllegalArgumentException.class, () -> new Moving(Moving.By.US, "  "));
    }
}
