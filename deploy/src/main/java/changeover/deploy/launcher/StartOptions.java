package changeover.deploy.launcher;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/** What the person asked of {@code deploy/start}. */
record StartOptions(Path data, int port, String listen, boolean demo, Optional<LocalDate> rehearsal) {
    static final String HELP = """
            Starts Changeover on this machine (PostgreSQL, Keycloak and the application) and stays until Ctrl-C.

              deploy/start [--data DIR] [--port N] [--no-demo] [--rehearsal DAY] [--listen ADDRESS]

              --data DIR       the folder that holds everything of this installation (~/.local/share/changeover)
              --port N         the port of the pages (8080)
              --no-demo        on the first start, leave out the two invented businesses
              --rehearsal DAY  set the clock to a day (2027-03-31), on a folder made for rehearsals only
              --listen ADDRESS the address to listen on (127.0.0.1: this machine only)""";

    static final int DEFAULT_PORT = 8080;

    /** @throws CannotStart with a sentence for what is not understood */
    static StartOptions of(List<String> words) {
        Path data = Path.of(System.getProperty("user.home"), ".local", "share", "changeover");
        int port = DEFAULT_PORT;
        String listen = "127.0.0.1";
        boolean demo = true;
        Optional<LocalDate> rehearsal = Optional.empty();
        Deque<String> rest = new ArrayDeque<>(words);
        while (!rest.isEmpty()) {
            String word = rest.removeFirst();
            int equals = word.indexOf('=');
            if (word.startsWith("--") && equals > 0) {
                rest.addFirst(word.substring(equals + 1));
                word = word.substring(0, equals);
            }
            switch (word) {
                case "--data" ->
                    data = Path.of(value(word, rest)).toAbsolutePath().normalize();
                case "--port" -> port = port(value(word, rest));
                case "--listen" -> listen = value(word, rest);
                case "--demo" -> demo = true;
                case "--no-demo" -> demo = false;
                case "--rehearsal" -> rehearsal = Optional.of(day(value(word, rest)));
                default ->
                    throw new CannotStart(
                            "deploy/start does not know " + word + "; deploy/start --help lists what it knows.");
            }
        }
        return new StartOptions(data, port, listen, demo, rehearsal);
    }

    private static String value(String option, Deque<String> rest) {
        if (rest.isEmpty() || rest.getFirst().isBlank()) {
            throw new CannotStart("A value is missing after " + option + ".");
        }
        return rest.removeFirst();
    }

    private static int port(String text) {
        if (!text.matches("[0-9]{1,5}") || Integer.parseInt(text) < 1 || Integer.parseInt(text) > 65_535) {
            throw new CannotStart("A port is a number from 1 to 65535, not " + text + ".");
        }
        return Integer.parseInt(text);
    }

    private static LocalDate day(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new CannotStart("A day is written like 2027-03-31, not " + text + ".", e);
        }
    }
}
