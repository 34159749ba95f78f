package changeover.contracts.takeover;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The cells of a brought list under the names of its columns. */
class BroughtFileTest {

    private static final List<Title> KNOWN = List.of(Title.needed("home", "maison"), Title.needed("day", "jour"));

    private static Map<String, String> cells(List<String> titles, String... cells) {
        return new BroughtFile.Columns(titles, KNOWN).row(2, List.of(cells)).cells();
    }

    @Test
    void a_column_is_known_in_either_language_and_what_nobody_knows_is_left_out() {
        assertEquals(
                Map.of("home", "H1", "day", "2026-01-05"),
                cells(List.of("Jour", "colour", "HOME"), "2026-01-05", "green", "H1"));
        assertEquals(Map.of("home", ""), cells(List.of("Maison"), ""));
        assertEquals(Map.of(), cells(List.of("colour"), "green"));
    }

    @Test
    void of_two_that_are_called_alike_the_first_counts() {
        assertEquals(Map.of("home", "H1"), cells(List.of("home", "maison"), "H1", "H2"));
    }

    @Test
    void a_day_has_one_meaning_and_is_of_our_age() {
        assertEquals(LocalDate.of(2025, 10, 3), row("2025-10-03").day("day"));
        assertEquals(LocalDate.of(1950, 1, 1), row("1950-01-01").day("day"));
        assertEquals(LocalDate.of(2200, 12, 31), row("2200-12-31").day("day"));
        for (String said : List.of("", "03/10/2025", "2025-02-30", "1949-12-31", "2201-01-01")) {
            assertEquals(
                    Refusal.of("brought.day", Map.of("said", said)).at("day"),
                    refusal(() -> row(said).day("day")));
        }
    }

    @Test
    void a_day_after_the_take_over_is_refused() {
        LocalDate day = LocalDate.of(2026, 11, 30);
        assertEquals(day, row("2026-11-30").dayUntil("day", day));
        assertEquals(
                "brought.after-take-over",
                refusal(() -> row("2026-12-01").dayUntil("day", day)).code());
    }

    private static BroughtFile.Row row(String day) {
        return new BroughtFile.Row(2, Map.of("day", day));
    }

    private static Refusal refusal(Runnable reading) {
        return assertThrows(Refused.class, reading::run).refusals().getFirst();
    }
}
