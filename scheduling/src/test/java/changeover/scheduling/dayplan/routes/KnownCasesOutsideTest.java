package changeover.scheduling.dayplan.routes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The best known distances of the first 25 customers, cut to one decimal: K. Helsgaun's LKH-3 (November 2017), results for
 * Solomon_25 instances. They are small: each is reached exactly, by the solver and without it.
 */
class KnownCasesOutsideTest {

    @Test
    void the_small_cases_are_driven_as_shortly_as_anybody_ever_has() {
        Routes solved = new SolvedRoutes(Duration.ofSeconds(3));
        check(solved, "R101", 6171);
        check(solved, "C101", 1913);
        check(solved, "RC101", 4611);
        check(solved, "R201", 4633);
    }

    @Test
    void so_they_are_without_the_solver() {
        Routes inserted = new InsertedRoutes(Duration.ofSeconds(3));
        check(inserted, "R101", 6171);
        check(inserted, "C101", 1913);
        check(inserted, "RC101", 4611);
        check(inserted, "R201", 4633);
    }

    private static void check(Routes routes, String name, long expected) {
        TravelDay day = KnownCases.read(name);
        DayRoutes answer = routes.of(day);
        assertNull(answer.fellBack());
        assertEquals(List.of(), DayChecked.broken(day, answer));
        assertEquals(List.of(), answer.leftOut());
        assertEquals(expected, answer.travel(), name);
    }
}
