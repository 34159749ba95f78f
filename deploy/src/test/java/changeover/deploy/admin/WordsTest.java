package changeover.deploy.admin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A command line is read once: options, flags and the words between them. */
class WordsTest {

    @Test
    void options_flags_and_words_are_told_apart() {
        Words words = new Words(
                "business add",
                List.of("--slug", "roy", "--small-supplier", "--name=Roy & Co", "x"),
                Set.of("--small-supplier"));
        assertEquals("roy", words.needed("--slug", "its slug"));
        assertEquals(Optional.of("Roy & Co"), words.option("--name"));
        assertTrue(words.has("--small-supplier"));
        assertEquals(List.of("x"), words.plain());
    }

    @Test
    void a_missing_option_is_named_with_what_it_is() {
        Words words = new Words("sql", List.of(), Set.of());
        assertEquals(
                "sql needs --as (app or owner).",
                assertThrows(IllegalArgumentException.class, () -> words.needed("--as", "app or owner"))
                        .getMessage());
    }

    @Test
    void an_unknown_option_is_named() {
        Words words = new Words("sql", List.of("--ass", "app"), Set.of());
        assertEquals(
                "sql does not know --ass.",
                assertThrows(IllegalArgumentException.class, () -> words.allow(Set.of("--as")))
                        .getMessage());
    }
}
