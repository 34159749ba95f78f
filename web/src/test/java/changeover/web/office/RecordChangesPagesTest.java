package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;
import static org.hamcrest.Matchers.matchesPattern;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.web.ALivedInHome;
import changeover.web.AShop;
import changeover.web.walls.ALivedInShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class RecordChangesPagesTest {

    private static final List<String> LISTS = List.of("prices", "taxes", "business", "seasons", "intervals", "kinds");

    @Inject
    AShop shops;

    @Inject
    ALivedInHome homes;

    @Inject
    ALivedInShop lived;

    @Inject
    EntityManager rows;

    @Test
    void who_changed_a_customer_when_and_what_it_said_before_stands_in_both_languages() {
        for (boolean french : List.of(false, true)) {
            var shop = shops.open("CA-QC", french ? "fr" : "en");
            UUID customer = homes.machines(shop, "en").customer();
            rewrite(shop, customer, "one", "0");
            rewrite(shop, customer, "each", "1");
            String path = shop.at("changes/customers/" + customer);
            as(shop.owner())
                    .get(path)
                    .then()
                    .statusCode(200)
                    .body(containsString("Basil Fenn"))
                    .body(containsString(french ? "façon de facturer" : "how invoices come"))
                    .body(containsString(french ? "une seule pour toutes les maisons" : "one for all homes"))
                    .body(containsString(french ? "une par maison" : "one a home"))
                    .body(containsString(french ? "Entré" : "Entered"))
                    .body(not(matchesPattern("(?s).*<td[^>]*>each</td>.*")));
            as(shop.office()).get(path).then().statusCode(404);
            as(shop.technician()).get(path).then().statusCode(404);
            as(shop.office())
                    .get(shop.at("customers/" + customer))
                    .then()
                    .body(not(containsString("changes/customers")));
            as(shop.owner()).get(shop.at("customers/" + customer)).then().body(containsString("changes/customers"));
        }
    }

    @Test
    void what_nobody_here_has_is_not_found() {
        var shop = shops.open("CA-ON", "en");
        var other = shops.open("CA-ON", "en");
        UUID theirs = homes.machines(other, "en").customer();
        as(shop.owner()).get(shop.at("changes/customers/" + theirs)).then().statusCode(404);
        as(shop.owner()).get(shop.at("changes/parts/none")).then().statusCode(404);
        for (String page : List.of("0", "-1", "x", "9999999")) {
            as(shop.owner())
                    .get(shop.at("changes/business?page=" + page))
                    .then()
                    .statusCode(404);
        }
    }

    @Test
    void a_long_history_is_leafed_through_fifty_at_a_time() {
        var shop = shops.open("CA-ON", "en");
        UUID customer = homes.machines(shop, "en").customer();
        for (int version = 0; version < 60; version++) {
            rewrite(shop, customer, version % 2 == 0 ? "each" : "one", String.valueOf(version));
        }
        String path = shop.at("changes/customers/" + customer);
        String first = as(shop.owner()).get(path).then().extract().asString();
        assertEquals(
                RecordChanges.A_PAGE,
                Pattern.compile("<td class=\"when keep\">")
                        .matcher(first)
                        .results()
                        .count());
        assertTrue(first.contains("?page=2"));
        as(shop.owner()).get(path + "?page=2").then().statusCode(200).body(not(containsString("page=3")));
        as(shop.owner()).get(path + "?page=7").then().body(containsString("No older change."));
    }

    @Test
    void what_was_taken_away_stays_in_the_history_of_what_it_hung_on() {
        var shop = shops.open("CA-ON", "en");
        UUID home = homes.machines(shop, "en").home();
        String path = shop.at("homes/" + home);
        post(shop.office(), path + "/codes", Map.of("kind", "alarm", "label", "cellar", "secret", "9753"))
                .statusCode(303);
        String access = as(shop.office()).get(path + "/access").then().extract().asString();
        String removal = Pattern.compile("/codes/[0-9a-f-]{36}/removal")
                .matcher(access)
                .results()
                .reduce((_, last) -> last)
                .orElseThrow()
                .group();
        post(shop.office(), path + removal, Map.of()).statusCode(303);
        as(shop.owner())
                .get(path + "/changes")
                .then()
                .body(containsString("cellar"))
                .body(containsString("taken away"))
                .body(not(containsString("9753")));
    }

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

    private void rewrite(AShop.Shop shop, UUID customer, String invoices, String version) {
        var fields = new HashMap<String, String>();
        fields.put("name", "Odalys Bramhall");
        fields.put("language", "en");
        fields.put("invoices", invoices);
        fields.put("version", version);
        post(shop.office(), shop.at("customers/" + customer), fields).statusCode(303);
    }

    private List<String> keys(AShop.Shop shop, Recorded kind) {
        return shops.in(
                shop,
                () -> rows.createNativeQuery(
                                "select cast(" + kind.key() + " as text) from " + kind.table() + " limit 20",
                                String.class)
                        .getResultStream()
                        .map(String.class::cast)
                        .toList());
    }

    private static Stream<String> tables() {
        return Stream.of(Recorded.values())
                .flatMap(kind -> Stream.concat(
                        Stream.of(kind.table()), kind.parts().stream().map(Recorded.Hanging::table)))
                .distinct();
    }

    private List<String> columns(String table) {
        return shops.in(
                shops.open("CA-ON", "en"),
                () -> rows.createNativeQuery(
                                "select cast(attname as text) from pg_attribute where attnum > 0 and not attisdropped"
                                        + " and attrelid = cast(:table as regclass)",
                                String.class)
                        .setParameter("table", table)
                        .getResultStream()
                        .map(String.class::cast)
                        .toList());
    }

    /** The words that a check allows in a column, read from the database's own catalogue. */
    private Map<String, List<String>> codes(String table) {
        var codes = new HashMap<String, List<String>>();
        List<?> checks = shops.in(
                shops.open("CA-ON", "en"),
                () -> rows.createNativeQuery(
                                "select pg_get_constraintdef(oid) from pg_constraint where contype = 'c'"
                                        + " and conrelid = cast(:table as regclass)",
                                String.class)
                        .setParameter("table", table)
                        .getResultList());
        for (Object check : checks) {
            var found = Pattern.compile("^CHECK \\(\\((\\w+) = ANY \\(ARRAY\\[(.*?)]\\)\\)\\)$")
                    .matcher((String) check);
            if (found.matches()) {
                codes.put(
                        found.group(1),
                        Pattern.compile("'([^']+)'")
                                .matcher(found.group(2))
                                .results()
                                .map(word -> word.group(1))
                                .toList());
            }
        }
        return codes;
    }
}
