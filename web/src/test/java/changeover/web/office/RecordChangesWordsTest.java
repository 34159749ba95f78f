package changeover.web.office;

import static changeover.web.AShop.as;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Whatever a record may hold is said in both languages. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class RecordChangesWordsTest extends ChangesTold {

    @Test
    void no_page_of_a_lived_in_business_shows_a_code_or_an_identifier() {
        for (var one : List.of(lived.ours(), lived.theirs())) {
            var shop = one.shop();
            var paths = new ArrayList<String>(LISTS);
            for (Recorded kind : Recorded.values()) {
                if (!kind.isList() && kind != Recorded.HOMES) {
                    String word = kind.name().toLowerCase(Locale.ROOT);
                    keys(shop, kind).forEach(key -> paths.add(word + "/" + key));
                }
            }
            for (String path : paths) {
                String page = as(shop.owner())
                        .get(shop.at("changes/" + path))
                        .then()
                        .statusCode(200)
                        .extract()
                        .asString();
                Pattern.compile("<td[^>]*>(.*?)</td>")
                        .matcher(page)
                        .results()
                        .forEach(cell -> assertTrue(
                                !cell.group(1)
                                        .matches(
                                                "(?s).*(\\b[a-z]+_[a-z_]+\\b|[0-9a-f]{8}-[0-9a-f]{4}-|\\d{4}-\\d\\d-\\d\\d|[{}]).*"),
                                path + ": " + cell.group(1)));
            }
        }
    }

    @Test
    void every_column_and_every_word_that_one_may_hold_is_said_in_both_languages() {
        var missing = new TreeSet<String>();
        for (String language : List.of("en", "fr-CA")) {
            ChangeNames names = ChangeNames.of(Locale.forLanguageTag(language));
            tables().forEach(table -> {
                if (names.word("table." + table).startsWith("table.")) {
                    missing.add(language + " table." + table);
                }
                columns(table).stream()
                        .filter(column -> !RecordChanges.OUR_OWN.contains(column))
                        .filter(column -> names.field(table, column).isEmpty())
                        .forEach(column -> missing.add(language + " " + table + "." + column));
                codes(table)
                        .forEach((column, words) -> words.stream()
                                .filter(word -> names.code(table, column, word).isEmpty())
                                .forEach(word -> missing.add(language + " " + table + "." + column + "." + word)));
            });
        }
        assertEquals(new TreeSet<>(), missing);
        assertEquals(
                new TreeSet<>(ChangeNames.of(Locale.ENGLISH).all().keySet()),
                new TreeSet<>(ChangeNames.of(Locale.CANADA_FRENCH).all().keySet()));
    }
}
