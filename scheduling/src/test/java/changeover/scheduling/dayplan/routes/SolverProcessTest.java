package changeover.scheduling.dayplan.routes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.EOFException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The solver may die or dawdle: the day is laid out all the same, and nothing of the solver stays behind. */
class SolverProcessTest {
    private static final Duration LONG = Duration.ofSeconds(60);

    @Test
    void a_solver_killed_in_the_middle_of_its_search_leaves_the_day_to_insertion() throws IOException {
        AtomicReference<Process> killed = new AtomicReference<>();
        SolverProcess solver = new SolverProcess(Duration.ofSeconds(15), process -> {
            killed.set(process);
            process.destroyForcibly();
        });
        List<Path> before = scratch();
        DayRoutes answer = check(solver);
        assertFalse(killed.get().isAlive());
        assertEquals("The solver's process ended without an answer: it was cut off", answer.fellBack());
        assertEquals(before, scratch());
        Path figures = Path.of(
                "/tmp/hsperfdata_" + System.getProperty("user.name"),
                Long.toString(killed.get().pid()));
        assertFalse(Files.exists(figures), figures.toString());
    }

    @Test
    void a_solver_that_is_late_is_ended() {
        AtomicReference<Process> late = new AtomicReference<>();
        DayRoutes answer = check(new SolverProcess(Duration.ofSeconds(4).minus(LONG), late::set));
        assertNotNull(answer.fellBack());
        assertTrue(late.get() == null || !late.get().isAlive());
    }

    @Test
    void what_a_dying_solver_wrote_is_told_whatever_its_bytes(@TempDir Path folder) throws IOException {
        Path said = folder.resolve("said");
        Files.write(said, "\nmémoire épuisée\n".getBytes(StandardCharsets.ISO_8859_1));
        assertEquals("m\ufffdmoire \ufffdpuis\ufffde", SolverProcess.lastWords(said, new EOFException()));
        Files.write(said, new byte[0]);
        assertEquals("it was cut off", SolverProcess.lastWords(said, new EOFException()));
    }

    private static DayRoutes check(SolverProcess solver) {
        TravelDay day = KnownCases.read("RC101");
        DayRoutes answer = new SolvedRoutes(LONG, SolverProcess.Way.LIBRARY, solver).of(day);
        assertEquals(List.of(), DayChecked.broken(day, answer));
        assertEquals(List.of(), answer.leftOut());
        return answer;
    }

    private static List<Path> scratch() throws IOException {
        try (Stream<Path> all = Files.list(Path.of(System.getProperty("java.io.tmpdir")))) {
            return all.filter(path -> path.getFileName().toString().startsWith(SolverProcess.SCRATCH))
                    .sorted()
                    .toList();
        }
    }
}
