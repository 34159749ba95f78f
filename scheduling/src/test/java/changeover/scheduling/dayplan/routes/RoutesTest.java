package changeover.scheduling.dayplan.routes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Whoever reckons, no promise is moved, no ticket passed over, no lunch worked through and no door missed. */
class RoutesTest {
    private static final Routes INSERTED = new InsertedRoutes(Duration.ofMillis(200));
    private static final Routes SOLVED = new SolvedRoutes(Duration.ofMillis(400));

    @Test
    void whatever_the_day_insertion_keeps_every_rule() {
        int days = Boolean.getBoolean("changeover.deep") ? 20_000 : 1_000;
        for (long seed = 0; seed < days; seed++) {
            TravelDay day = Day.some(seed);
            DayRoutes answer = new InsertedRoutes(Duration.ZERO).of(day);
            assertEquals(List.of(), DayChecked.broken(day, answer), "seed " + seed);
        }
    }

    @Test
    void whatever_the_day_shorter_roads_keep_every_rule_and_visit_no_fewer() {
        int days = Boolean.getBoolean("changeover.deep") ? 2_000 : 60;
        for (long seed = 0; seed < days; seed++) {
            TravelDay day = Day.some(seed);
            DayRoutes before = new InsertedRoutes(Duration.ZERO).of(day);
            DayRoutes answer = new InsertedRoutes(Duration.ofMillis(30)).of(day);
            assertEquals(List.of(), DayChecked.broken(day, answer), "seed " + seed);
            assertTrue(answer.leftOut().size() <= before.leftOut().size(), "seed " + seed);
            assertTrue(
                    answer.leftOut().size() < before.leftOut().size() || answer.travel() <= before.travel(),
                    "seed " + seed);
        }
    }

    @Test
    void where_the_time_is_over_already_nothing_is_searched() {
        TravelDay day = KnownCases.read("R101");
        assertEquals(
                new InsertedRoutes(Duration.ZERO).of(day).travel(),
                new InsertedRoutes(Duration.ofMillis(-5)).of(day).travel());
    }

    @Test
    void whatever_the_day_the_solver_keeps_every_rule() {
        int days = Boolean.getBoolean("changeover.deep") ? 60 : 4;
        for (long seed = 100; seed < 100 + days; seed++) {
            TravelDay day = Day.some(seed);
            DayRoutes answer = SOLVED.of(day);
            assertNull(answer.fellBack(), "seed " + seed);
            assertEquals(List.of(), DayChecked.broken(day, answer), "seed " + seed);
        }
    }

    @Test
    void the_library_alone_keeps_every_rule_too() {
        TravelDay day = Day.some(113);
        DayRoutes answer = SolvedRoutes.library(Duration.ofMillis(1000)).of(day);
        assertNull(answer.fellBack());
        assertEquals(List.of(), DayChecked.broken(day, answer));
    }

    @Test
    void a_promised_hour_stays_though_it_costs_a_second_way() {
        Day day = new Day()
                .technician(Set.of(), null)
                .technician(Set.of(), null)
                .promised(60, 0, 9, 30)
                .stop(59, 8, 16, 30)
                .promised(1, 0, 11, 30);
        DayRoutes answer = check(day, INSERTED);
        assertEquals(List.of(Day.visit(0), Day.visit(1), Day.visit(2)), visits(answer, 0));
        assertEquals(
                9 * Day.HOUR, answer.drives().getFirst().arrivals().getFirst().starts());
        assertEquals(
                11 * Day.HOUR, answer.drives().getFirst().arrivals().getLast().starts());
        check(day, SOLVED);
    }

    @Test
    void whoever_holds_the_ticket_drives_farther_for_it() {
        Day day = new Day()
                .technician(Set.of("gas"), null)
                .technician(Set.of("refrigerant"), null)
                .stop(30, 8, 16, 60, "gas")
                .stop(31, 8, 16, 60, "refrigerant");
        DayRoutes answer = check(day, INSERTED);
        assertEquals(List.of(Day.visit(0)), visits(answer, 0));
        assertEquals(List.of(Day.visit(1)), visits(answer, 1));
        assertEquals(answer.travel(), check(day, SOLVED).travel());
    }

    @Test
    void a_ticket_that_nobody_holds_leaves_the_visit_out() {
        Day day = new Day()
                .technician(Set.of("gas"), null)
                .stop(3, 8, 16, 60, "electrical")
                .stop(4, 8, 16, 60);
        assertEquals(List.of(Day.visit(0)), check(day, INSERTED).leftOut());
        assertEquals(List.of(Day.visit(0)), check(day, SOLVED).leftOut());
    }

    @Test
    void lunch_takes_its_half_hour_from_a_full_day() {
        // Eight visits of 65 minutes and sixteen minutes of road fill nine hours only without the lunch.
        Day full = new Day().technician(Set.of(), null);
        Day withLunch = new Day().technician(Set.of(), new Lunch(12 * Day.HOUR, 13 * Day.HOUR, Day.HOUR));
        IntStream.rangeClosed(1, 8).forEach(place -> {
            full.stop(place, 8, 16, 65);
            withLunch.stop(place, 8, 16, 65);
        });
        assertEquals(0, check(full, INSERTED).leftOut().size());
        assertEquals(1, check(withLunch, INSERTED).leftOut().size());
        assertEquals(1, check(withLunch, SOLVED).leftOut().size());
    }

    @Test
    void lunch_is_eaten_on_a_long_road() {
        Day day = new Day()
                .technician(Set.of(), new Lunch(12 * Day.HOUR, 12 * Day.HOUR, Day.HOUR / 2))
                .promised(1, 0, 9, 150)
                .promised(60, 0, 13, 30);
        DayRoutes answer = check(day, INSERTED);
        assertEquals(12 * Day.HOUR, answer.drives().getFirst().lunchStarts());
        check(day, SOLVED);
    }

    @Test
    void what_was_promised_beyond_all_hours_is_named_and_left_as_it_is() {
        Day day = new Day()
                .technician(Set.of(), null)
                .technician(Set.of(), null)
                .promised(1, 0, 9, 60)
                .promised(60, 0, 10, 60)
                .stop(2, 8, 16, 60);
        DayRoutes answer = check(day, INSERTED);
        assertEquals(List.of(Day.technician(0)), answer.overPromised());
        assertEquals(List.of(Day.visit(2)), visits(answer, 0));
        assertEquals(answer.overPromised(), check(day, SOLVED).overPromised());
    }

    @Test
    void a_day_without_visits_or_without_crew_has_its_answer() {
        assertEquals(0, check(new Day().technician(Set.of(), Day.NOON), SOLVED).travel());
        assertEquals(1, check(new Day().stop(1, 8, 16, 60), SOLVED).leftOut().size());
    }

    private static DayRoutes check(Day told, Routes routes) {
        TravelDay day = told.onAStreet();
        DayRoutes answer = routes.of(day);
        assertEquals(List.of(), DayChecked.broken(day, answer));
        assertNull(answer.fellBack());
        return answer;
    }

    private static List<java.util.UUID> visits(DayRoutes answer, int drive) {
        return answer.drives().get(drive).visits().toList();
    }
}
