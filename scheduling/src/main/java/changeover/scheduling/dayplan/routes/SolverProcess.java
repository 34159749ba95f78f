package changeover.scheduling.dayplan.routes;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.StreamCorruptedException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/**
 * Asks the solver in a process of its own, so that a crash of native code takes no page down. It is given the time it may
 * take and a little more; what is late then is ended.
 *
 * @param grace what starting and answering may take beyond the time of the search
 * @param begun is handed the process when its search has begun
 */
record SolverProcess(Duration grace, Consumer<Process> begun) {
    /** Names the folder of each asking process, so that nobody clears or counts another's. */
    static final String SCRATCH = "changeover-routes-" + ProcessHandle.current().pid() + "-";

    /** Our search, or the routing library as it stands. */
    enum Way {
        OURS,
        LIBRARY
    }

    /** The solver gave no answer; the message says why. */
    static final class NoAnswer extends Exception {
        private static final long serialVersionUID = 1;

        NoAnswer(String why) {
            super(why);
        }
    }

    SolverProcess() {
        this(Duration.ofSeconds(15), process -> {});
    }

    List<int[]> orders(TravelDay day, Way way, Duration limit) throws NoAnswer {
        try {
            Path scratch = Files.createTempDirectory(SCRATCH);
            try {
                return orders(day, way, limit, scratch);
            } finally {
                Unpacked.clear(scratch);
            }
        } catch (IOException cause) {
            throw new NoAnswer("The solver's process could not be started: " + cause.getMessage());
        }
    }

    private List<int[]> orders(TravelDay day, Way way, Duration limit, Path scratch) throws IOException, NoAnswer {
        Path said = scratch.resolve("said");
        Process child = new ProcessBuilder(command(way, limit, scratch))
                .redirectError(said.toFile())
                .start();
        var end = child.onExit();
        end.orTimeout(limit.plus(grace).toMillis(), TimeUnit.MILLISECONDS).exceptionally(late -> {
            child.destroyForcibly();
            return child;
        });
        try (DataInputStream in = new DataInputStream(new BufferedInputStream(child.getInputStream()))) {
            try (DataOutputStream out = new DataOutputStream(new BufferedOutputStream(child.getOutputStream()))) {
                DayBytes.write(day, out);
            }
            if (in.readUnsignedByte() != DayBytes.BEGUN) {
                throw new StreamCorruptedException("what came back is no answer");
            }
            begun.accept(child);
            return DayBytes.readOrders(day, in);
        } catch (IOException cause) {
            throw new NoAnswer("The solver's process ended without an answer: " + lastWords(said, cause));
        } finally {
            child.destroyForcibly();
            child.onExit().join();
        }
    }

    private static List<String> command(Way way, Duration limit, Path scratch) throws IOException {
        return List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx384m",
                "-XX:+UseSerialGC",
                "-XX:ActiveProcessorCount=1",
                "-XX:-UsePerfData",
                "--enable-native-access=ALL-UNNAMED",
                "--sun-misc-unsafe-memory-access=allow",
                "-Djava.io.tmpdir=" + scratch,
                "-cp",
                String.join(File.pathSeparator, SolverClasses.found()),
                SolverChild.class.getName(),
                Unpacked.library().toString(),
                way.name(),
                Long.toString(limit.toMillis()));
    }

    /** The first line it complained with; whatever bytes native code wrote there. */
    static String lastWords(Path said, IOException cause) throws IOException {
        return new String(Files.readAllBytes(said), StandardCharsets.UTF_8)
                .lines()
                .filter(line -> !line.isBlank())
                .findFirst()
                .orElse(
                        cause instanceof StreamCorruptedException
                                ? String.valueOf(cause.getMessage())
                                : "it was cut off");
    }
}
