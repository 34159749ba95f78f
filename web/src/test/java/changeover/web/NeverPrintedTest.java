package changeover.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * "9.97 %", "14.97 %" and "14.975 %" must not appear on a document (Revenu Québec, "Calculating the Taxes"): in no words, on no
 * page and in no table of ours, in either language's way of writing.
 */
class NeverPrintedTest {

    private static final Pattern NEVER = Pattern.compile("(?<!\\d)(9[.,]97|14[.,]97|14[.,]975)[\\s\\u00a0\\u202f]*%");

    @Test
    void the_rates_that_are_no_rates_stand_nowhere() throws IOException {
        List<String> found = new ArrayList<>();
        int read = 0;
        for (String module : List.of("../contracts", "../scheduling", "../billing", "../web")) {
            try (Stream<Path> files = Files.walk(Path.of(module, "src", "main", "resources"))) {
                for (Path file : files.filter(NeverPrintedTest::isText).toList()) {
                    read++;
                    if (NEVER.matcher(Files.readString(file)).find()) {
                        found.add(file.toString());
                    }
                }
            }
        }
        assertEquals(List.of(), found);
        assertTrue(read > 100, read + " files");
        assertTrue(NEVER.matcher("TVQ 9,97\u00a0%").find()
                && NEVER.matcher("14.975 %").find());
        assertTrue(
                !NEVER.matcher("QST 9.975%").find() && !NEVER.matcher("19.97 %").find());
    }

    private static boolean isText(Path file) {
        return Stream.of(".html", ".properties", ".json", ".sql", ".txt")
                .anyMatch(end -> file.getFileName().toString().endsWith(end));
    }
}
