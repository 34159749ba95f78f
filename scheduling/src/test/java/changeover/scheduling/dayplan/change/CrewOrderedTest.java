package changeover.scheduling.dayplan.change;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.scheduling.dayplan.change.HeldDay.Held;
import changeover.scheduling.dayplan.routes.Drives;
import changeover.scheduling.dayplan.routes.GivenOrders;
import changeover.scheduling.dayplan.routes.InsertedRoutes;
import changeover.scheduling.dayplan.routes.Routes;
import changeover.scheduling.dayplan.routes.SolvedRoutes;
import changeover.scheduling.dayplan.season.Roads;
import java.time.Duration;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** A straight road with a place every ten minutes; one technician lives at its first place, the other at its last. */
class CrewOrderedTest {

    private static final UUID WEST = new UUID(1, 1);
    private static final UUID EAST = new UUID(1, 2);
    private static final int LAST = 11;
    private static final Routes QUICK = new InsertedRoutes(Duration.ofMillis(250));
    private static final Roads ROADS = road();

    private static Roads road() {
        int[][] seconds = new int[LAST + 1][LAST + 1];
        for (int from = 0; from <= LAST; from++) {
            for (int to = 0; to <= LAST; to++) {
                seconds[from][to] = 600 * Math.abs(from - to);
            }
        }
        return Roads.of(Drives.of(seconds));
    }

    private static Held held(int number, String starts, int place, boolean told, String... tickets) {
        int from = LocalTime.parse(starts).toSecondOfDay() / 60;
        return new Held(new UUID(2, number), from, from + 60, place, Set.of(tickets), told, told, 0, 24 * 60, 1);
    }

    private static List<HeldDay> crew(List<Held> west, List<Held> east) {
        return List.of(
                new HeldDay(WEST, Set.of("gas"), 0, 480, 960, 0, 0, false, west),
                new HeldDay(EAST, Set.of(), LAST, 480, 960, 0, 0, false, east));
    }

    private static List<UUID> visits(CrewOrdered ordered, UUID technician) {
        return ordered.rounds().stream()
                .filter(round -> round.technician().equals(technician))
                .flatMap(round -> round.arrivals().stream())
                .map(CrewOrdered.Arrival::visit)
                .sorted()
                .toList();
    }

    @Test
    void visits_change_hands_where_that_is_less_road() {
        List<HeldDay> crew = crew(
                List.of(held(1, "09:50", 11, false), held(2, "12:00", 1, false)),
                List.of(held(3, "10:00", 0, false), held(4, "12:50", 10, false)));
        for (Routes routes : List.of(QUICK, new SolvedRoutes(Duration.ofSeconds(1)))) {
            CrewOrdered ordered = CrewOrdered.of(crew, ROADS, routes).orElseThrow();
            assertFalse(ordered.plain());
            assertEquals(List.of(new UUID(2, 2), new UUID(2, 3)), visits(ordered, WEST));
            assertEquals(List.of(new UUID(2, 1), new UUID(2, 4)), visits(ordered, EAST));
            assertEquals(40, ordered.road(), "out to the next place and back, each");
        }
    }

    @Test
    void who_was_told_keeps_the_hour_and_the_technician_and_a_ticket_is_needed() {
        List<HeldDay> crew = crew(
                List.of(held(1, "10:00", 10, true), held(2, "14:00", 11, false, "gas")),
                List.of(held(3, "10:00", 0, false)));
        CrewOrdered ordered = CrewOrdered.of(crew, ROADS, QUICK).orElseThrow();
        assertEquals(List.of(new UUID(2, 1), new UUID(2, 2), new UUID(2, 3)), visits(ordered, WEST));
        CrewOrdered.Arrival told = ordered.rounds().getFirst().arrivals().stream()
                .filter(CrewOrdered.Arrival::stays)
                .findFirst()
                .orElseThrow();
        assertEquals(600, told.starts());
    }

    @Test
    void what_was_shown_is_found_again_and_what_nobody_was_shown_is_not_taken() {
        List<HeldDay> crew = crew(
                List.of(held(1, "09:50", 11, false), held(2, "12:00", 1, true)),
                List.of(held(3, "10:00", 0, false), held(4, "12:50", 6, false, "gas")));
        CrewOrdered shown = CrewOrdered.of(crew, ROADS, QUICK).orElseThrow();
        assertEquals(
                Optional.of(shown),
                CrewOrdered.of(crew, ROADS, GivenOrders.read(shown.orders().text())),
                shown.toString());
        UUID stranger = new UUID(9, 9);
        for (Map<UUID, List<UUID>> forged : List.of(
                Map.<UUID, List<UUID>>of(),
                Map.of(WEST, List.of(stranger)),
                Map.of(EAST, List.of(new UUID(2, 4)), WEST, List.of(new UUID(2, 1), new UUID(2, 3))))) {
            assertTrue(CrewOrdered.of(crew, ROADS, new GivenOrders(forged)).isEmpty(), forged.toString());
        }
    }

    @Test
    void two_who_go_together_stay_together() {
        Held both = held(1, "10:00", 5, true);
        CrewOrdered ordered = CrewOrdered.of(
                        crew(List.of(both), List.of(both, held(2, "13:00", 10, false))), ROADS, QUICK)
                .orElseThrow();
        assertEquals(List.of(both.visit()), visits(ordered, WEST));
        assertEquals(List.of(both.visit(), new UUID(2, 2)), visits(ordered, EAST));
        assertTrue(ordered.moved().values().stream()
                .flatMap(List::stream)
                .noneMatch(one -> one.visit().equals(both.visit())));
    }
}
