package changeover.contracts.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.words.Wording;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class CatalogueWordsTest {

    private static final Set<String> ENGLISH = Set.of(
            "the",
            "and",
            "of",
            "with",
            "is",
            "are",
            "or",
            "when",
            "its",
            "it",
            "at",
            "by",
            "clean",
            "check",
            "change",
            "filter",
            "before",
            "unit",
            "air-free",
            "look",
            "water",
            "pump",
            "heat");

    private final Catalogue catalogue = Catalogue.shipped();

    @Test
    void everyWordStandsInBothLanguages() throws IOException {
        for (String file : List.of("kinds", "tasks", "parts", "cautions", "sentences")) {
            try (var in = Catalogue.class.getResourceAsStream(file + ".json")) {
                checkWords(new ObjectMapper().readTree(in), file);
            }
        }
    }

    @Test
    void everyCautionEndsWithCodesAndLicences() {
        for (Caution caution : catalogue.cautions()) {
            assertTrue(caution.wording().en().contains("local codes"), caution.code());
            assertTrue(caution.wording().en().endsWith("belongs to licensed people."), caution.code());
            assertTrue(caution.wording().fr().contains("codes locaux"), caution.code());
            assertTrue(caution.wording().fr().endsWith("titulaires des licences requises."), caution.code());
        }
        Wording chemicals = catalogue.findCaution("chemicals").orElseThrow().wording();
        Stream.of("bleach", "acid", "ammonia", "another cleaner")
                .forEach(word -> assertTrue(chemicals.en().contains(word), word));
    }

    @Test
    void findingsComeInEveryLevel() {
        Map<FindingLevel, Long> count = catalogue.sentences().stream()
                .collect(Collectors.groupingBy(
                        Sentence::level, () -> new EnumMap<>(FindingLevel.class), Collectors.counting()));
        assertEquals(Set.of(FindingLevel.values()), count.keySet());
    }

    private static void checkWords(JsonNode node, String where) {
        if (node.has("en") || node.has("fr")) {
            String en = node.path("en").asText();
            String fr = node.path("fr").asText();
            assertFalse(en.isBlank() || fr.isBlank(), where + " " + node);
            for (String word : fr.toLowerCase(Locale.ROOT).split("[^\\p{L}-]+")) {
                assertFalse(ENGLISH.contains(word), where + ": \"" + word + "\" in " + fr);
            }
            assertFalse(fr.matches(".* [;:%?!].*"), "no-break space missing: " + fr);
            assertFalse(fr.contains("'") || en.contains("'"), "straight apostrophe: " + node);
            return;
        }
        node.forEach(child -> checkWords(child, where));
    }
}
