package changeover.scheduling.dayplan.change;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import changeover.contracts.calendar.Window;
import changeover.scheduling.dayplan.change.WholeDay.Goes;
import changeover.scheduling.dayplan.change.WholeDay.Leaving;
import changeover.scheduling.dayplan.change.WholeDay.Standing;
import changeover.scheduling.dayplan.routes.Drives;
import changeover.scheduling.dayplan.season.Roads;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** A day of the 2nd falls away; one technician has an hour and a half on the 3rd and all of the 4th. */
class WholeDayTest {

    private static final UUID IDA = new UUID(1, 1);
    private static final LocalDate STORM = LocalDate.of(2026, 12, 2);
    private static final LocalDate THIRD = LocalDate.of(2026, 12, 3);
    private static final LocalDate FOURTH = LocalDate.of(2026, 12, 4);
    private static final Roads ROADS = Roads.of(Drives.of(new int[][] {{0}}));

    private static Leaving leaving(int number, boolean told, LocalDate last, boolean together) {
        UUID visit = new UUID(2, number);
        return new Leaving(
                visit,
                visit,
                "9 Tannery Row",
                null,
                IDA,
                new Window(STORM.minusDays(9), last.plusDays(1)),
                told,
                480 + number,
                together);
    }

    private static DaysHeld.Held held(LocalDate day, List<Leaving> all) {
        int until = day.equals(THIRD) ? 480 + 90 : 960;
        return new DaysHeld.Held(
                List.of(new HeldDay(IDA, Set.of(), 0, 480, until, 0, 0, false, List.of())),
                List.of(),
                ROADS,
                all.stream()
                        .map(one -> new Insertions.Wanted(one.visit(), 60, Set.of(), 0, 1, 0, 24 * 60))
                        .toList());
    }

    private static Map<Integer, Goes> check(Leaving... leaving) {
        List<Leaving> all = List.of(leaving);
        return WholeDay.of(all, List.of(THIRD, FOURTH), day -> held(day, all)).visits().stream()
                .collect(Collectors.toMap(one -> one.visit().was() - 480, one -> one));
    }

    @Test
    void whose_last_day_is_near_comes_first_and_the_others_follow() {
        Map<Integer, Goes> goes = check(leaving(1, true, FOURTH, false), leaving(2, false, THIRD, false));
        assertEquals(THIRD, goes.get(2).day());
        assertEquals(Standing.KEPT, goes.get(2).standing());
        assertEquals(FOURTH, goes.get(1).day());
        assertEquals(Standing.KEPT, goes.get(1).standing());
    }

    @Test
    void of_two_with_the_same_last_day_the_one_that_was_told_an_hour_comes_first() {
        Map<Integer, Goes> goes = check(leaving(1, false, FOURTH, false), leaving(2, true, FOURTH, false));
        assertEquals(THIRD, goes.get(2).day());
        assertEquals(FOURTH, goes.get(1).day());
    }

    @Test
    void a_window_that_is_over_waits_for_those_that_can_still_be_kept_and_is_named() {
        Map<Integer, Goes> goes = check(leaving(1, true, STORM, false), leaving(2, false, FOURTH, false));
        assertEquals(THIRD, goes.get(2).day());
        assertEquals(FOURTH, goes.get(1).day());
        assertEquals(Standing.LATE, goes.get(1).standing());
    }

    @Test
    void where_two_go_the_visit_goes_back_to_the_season() {
        Map<Integer, Goes> goes = check(leaving(1, true, FOURTH, true), leaving(2, true, STORM, true));
        assertNull(goes.get(1).day());
        assertEquals(Standing.OPEN, goes.get(1).standing());
        assertEquals(Standing.OVER, goes.get(2).standing());
    }

    @Test
    void whoever_was_told_is_rung_where_no_message_reaches_them_in_time() {
        Goes far = check(leaving(1, true, FOURTH, false)).get(1);
        assertEquals(false, WholeDayHeard.mustBeRung(far, STORM, true, STORM.minusDays(2)));
        assertEquals(true, WholeDayHeard.mustBeRung(far, STORM, true, STORM.minusDays(1)));
        assertEquals(true, WholeDayHeard.mustBeRung(far, STORM, false, STORM.minusDays(2)));
        Goes back = check(leaving(1, true, FOURTH, true)).get(1);
        assertEquals(true, WholeDayHeard.mustBeRung(back, STORM, true, STORM.minusDays(2)));
        Goes untold = check(leaving(1, false, FOURTH, false)).get(1);
        assertEquals(false, WholeDayHeard.mustBeRung(untold, STORM, false, STORM));
    }
}
