package changeover.deploy.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The command as whoever calls it sees it: what it was given, what it printed, and how it ended. */
record Asked(int exit, String out, String err) {

    static Asked rule(String input, String... words) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int exit = new Rules(
                        new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)),
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8))
                .run(words);
        return new Asked(exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** The answer as a document; whatever was refused fails. */
    static JsonNode answer(String rule, String input) {
        Asked asked = rule(input, rule);
        assertEquals("", asked.err, rule);
        assertEquals(0, asked.exit, rule);
        try {
            return Answers.JSON.readTree(asked.out);
        } catch (JsonProcessingException cause) {
            throw new UncheckedIOException(cause);
        }
    }

    /** One plain sentence on standard error, nothing on standard output, and the exit says so. */
    static void refused(String rule, String input, String sentence) {
        Asked asked = rule(input, rule);
        assertEquals(sentence, asked.err.strip());
        assertEquals("", asked.out);
        assertEquals(1, asked.exit);
    }

    static void refusedInASentence(String rule, String input) {
        Asked asked = rule(input, rule);
        assertEquals(1, asked.exit, input + asked.out);
        assertEquals("", asked.out);
        assertTrue(asked.err.strip().matches("[A-Za-z][^\\n]+\\."), input + " -> " + asked.err);
        assertFalse(asked.err.contains("Exception"), asked.err);
    }
}
