package changeover.scheduling.dayplan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalTime;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What a visit asks, put together. */
class NeedTest {

    private static Need need(int people, Set<String> tickets, @Nullable String earliest, @Nullable String latest) {
        return new Need(
                people,
                tickets,
                earliest == null ? null : LocalTime.parse(earliest),
                latest == null ? null : LocalTime.parse(latest));
    }

    @Test
    void tasks_count_together_the_more_people_all_tickets_and_the_narrower_hours() {
        assertEquals(
                need(2, Set.of("gas", "electrical"), "09:00", "11:00"),
                need(1, Set.of("gas"), "08:00", "11:00").with(need(2, Set.of("electrical"), "09:00", "15:00")));
        assertEquals(need(1, Set.of(), null, "15:00"), Need.NOTHING.with(need(1, Set.of(), null, "15:00")));
        assertTrue(Need.NOTHING.with(Need.NOTHING).isNothing());
    }

    @Test
    void an_hour_written_by_hand_stands_before_the_tasks_and_people_are_never_fewer() {
        Need tasks = need(2, Set.of("gas"), "08:00", "11:00");
        assertEquals(
                need(2, Set.of("gas", "refrigerant"), "13:00", null),
                tasks.under(need(1, Set.of("refrigerant"), "13:00", null)));
        assertEquals(tasks, tasks.under(Need.NOTHING));
    }
}
