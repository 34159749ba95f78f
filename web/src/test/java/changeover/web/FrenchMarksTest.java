package changeover.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Marks of Canadian French on every page: a no-break space before a colon and inside guillemets, none before ; ? and !, and
 * the no-break space itself, since message files know no escapes.
 */
class FrenchMarksTest {

    private static final Pattern WRONG = Pattern.compile(" :|[ \u00a0\u202f][;?!](?!=)|« | »|\\\\u[0-9a-fA-F]{4}");

    @Test
    void every_french_message_keeps_the_marks() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("src/main/resources/messages"))) {
            List<String> wrong = files.filter(file -> file.toString().endsWith("_fr-CA.properties"))
                    .sorted()
                    .flatMap(FrenchMarksTest::wrong)
                    .toList();
            assertEquals(List.of(), wrong);
        }
    }

    private static Stream<String> wrong(Path file) {
        try {
            return Files.readAllLines(file).stream()
                    .filter(line ->
                            WRONG.matcher(line.replaceAll("\\{[^}]*}", "")).find())
                    .map(line -> file.getFileName() + ": " + line);
        } catch (IOException unreadable) {
            throw new java.io.UncheckedIOException(unreadable);
        }
    }
}
