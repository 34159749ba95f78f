package changeover.contracts.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class ChecksTest {

    private static void check(String said, String expected) {
        var checks = new Checks();
        var _ = checks.optionalLine("reference", said);
        List<Refusal> refusals = checks.refusals();
        assertEquals(expected, refusals.isEmpty() ? "-" : refusals.getFirst().code());
    }

    @Test
    void what_turns_the_direction_of_writing_is_refused_and_what_is_written_so_is_not() {
        for (String mark : List.of(
                "\u202A", "\u202B", "\u202C", "\u202D", "\u202E", "\u2066", "\u2067", "\u2068", "\u2069", "\u200E",
                "\u200F", "\u061C")) {
            check("INV-" + mark + "0012", "text.turns");
        }
        check("INV-0012", "-");
        check("Élodie Œuvrard", "-");
        check("\u05D3\u05E0\u05D9 12", "-");
        check("\u0645\u0631\u064A\u0645", "-");
        check("a\u200Cb\u200Dc", "-");
        check("1\u00a0250\u202f$", "-");
        check("\u0000", "text.unprintable");
        check("two\nlines", "text.one-line");
    }
}
