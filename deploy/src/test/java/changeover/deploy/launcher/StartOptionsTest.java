package changeover.deploy.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is typed after deploy/start is understood, or answered with one sentence. */
class StartOptionsTest {

    @Test
    void nothing_means_this_machine_only_port_8080_and_the_demo() {
        StartOptions options = StartOptions.of(List.of());
        assertEquals("127.0.0.1", options.listen());
        assertEquals(8080, options.port());
        assertEquals(true, options.demo());
        assertEquals(Optional.empty(), options.rehearsal());
    }

    @Test
    void both_spellings_of_an_option_mean_the_same() {
        StartOptions apart = StartOptions.of(List.of("--data", "/srv/x", "--port", "8181", "--no-demo"));
        StartOptions joined = StartOptions.of(List.of("--data=/srv/x", "--port=8181", "--no-demo"));
        assertEquals(apart, joined);
        assertEquals(Path.of("/srv/x"), apart.data());
        assertEquals(false, apart.demo());
    }

    @Test
    void a_rehearsal_names_its_day() {
        assertEquals(
                Optional.of(LocalDate.of(2027, 3, 31)),
                StartOptions.of(List.of("--rehearsal", "2027-03-31")).rehearsal());
    }

    @Test
    void what_is_not_understood_is_said_in_one_sentence() {
        refused("A port is a number from 1 to 65535, not 99999.", "--port", "99999");
        refused("A port is a number from 1 to 65535, not x.", "--port", "x");
        refused("A day is written like 2027-03-31, not tomorrow.", "--rehearsal", "tomorrow");
        refused("A value is missing after --data.", "--data");
        refused("deploy/start does not know --fast; deploy/start --help lists what it knows.", "--fast");
    }

    private static void refused(String sentence, String... words) {
        assertEquals(
                sentence,
                assertThrows(CannotStart.class, () -> StartOptions.of(List.of(words)))
                        .getMessage());
    }
}
