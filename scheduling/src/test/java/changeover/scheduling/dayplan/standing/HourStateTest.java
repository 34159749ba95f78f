package changeover.scheduling.dayplan.standing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.scheduling.visits.VisitEnd;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** How an hour stands. */
class HourStateTest {

    private static void check(boolean hasDay, boolean told, boolean begun, @Nullable VisitEnd end, HourState expected) {
        assertEquals(expected, HourState.of(hasDay, told, begun, end));
    }

    @Test
    void an_hour_is_proposed_then_confirmed_then_under_way_then_over() {
        check(false, false, false, null, HourState.WITHOUT_DAY);
        check(true, false, false, null, HourState.PROPOSED);
        check(true, true, false, null, HourState.CONFIRMED);
        check(true, true, true, null, HourState.UNDER_WAY);
        check(true, false, true, null, HourState.UNDER_WAY);
        check(false, false, true, null, HourState.UNDER_WAY);
        check(true, true, true, VisitEnd.CLOSED, HourState.DONE);
        check(true, true, false, VisitEnd.NO_ACCESS, HourState.NO_ACCESS);
        check(false, false, false, VisitEnd.NOT_KEPT, HourState.NOT_KEPT);
        check(false, false, false, VisitEnd.CANCELLED, HourState.CANCELLED);
    }
}
