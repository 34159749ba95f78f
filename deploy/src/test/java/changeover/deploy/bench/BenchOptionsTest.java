package changeover.deploy.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A word that a measure does not know is refused in a sentence, before minutes go by. */
class BenchOptionsTest {

    @Test
    void what_a_measure_knows_is_taken_in_any_order() {
        assertEquals(Optional.empty(), BenchOptions.wrong("season", List.of("--size", "1000")));
        assertEquals(Optional.empty(), BenchOptions.wrong("page", List.of()));
        assertEquals(Optional.empty(), BenchOptions.wrong("tenants", List.of("--minutes", "5", "--size", "100")));
    }

    @Test
    void the_rest_is_refused_with_what_is_known() {
        String season = "deploy/bench season takes --size, a whole number from 1 to 1000000.";
        for (List<String> wrong : List.of(
                List.of("--size"),
                List.of("--size", "abc"),
                List.of("--size", "0"),
                List.of("--sise", "100"),
                List.of("--size", "1", "--size", "2"),
                List.of("100"))) {
            assertEquals(Optional.of(season), BenchOptions.wrong("season", wrong), wrong.toString());
        }
        assertEquals(
                Optional.of("deploy/bench page takes no option."), BenchOptions.wrong("page", List.of("--size", "50")));
        assertEquals(
                Optional.of(
                        "deploy/bench tenants takes --size, a whole number from 10 to 100000; --minutes, a whole number"
                                + " from 1 to 600."),
                BenchOptions.wrong("tenants", List.of("--size", "5")));
    }

    @Test
    void of_what_is_said_to_all_each_takes_its_own() {
        assertEquals(List.of("--size", "1000"), BenchOptions.own("season", List.of("--size", "1000")));
        assertEquals(List.of(), BenchOptions.own("page", List.of("--size", "1000")));
    }
}
