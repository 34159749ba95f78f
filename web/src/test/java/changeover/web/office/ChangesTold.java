package changeover.web.office;

import static changeover.web.AShop.post;

import changeover.web.ALivedInHome;
import changeover.web.AShop;
import changeover.web.walls.ALivedInShop;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** What the tests of the records of changes share. */
class ChangesTold {

    static final List<String> LISTS =
            List.of("prices", "fees", "costs", "taxes", "business", "seasons", "intervals", "kinds");

    @Inject
    AShop shops;

    @Inject
    ALivedInHome homes;

    @Inject
    ALivedInShop lived;

    @Inject
    EntityManager rows;

    void rewrite(AShop.Shop shop, UUID customer, String invoices, String version) {
        var fields = new HashMap<String, String>();
        fields.put("name", "Odalys Bramhall");
        fields.put("language", "en");
        fields.put("invoices", invoices);
        fields.put("version", version);
        post(shop.office(), shop.at("customers/" + customer), fields).statusCode(303);
    }

    List<String> keys(AShop.Shop shop, Recorded kind) {
        return shops.in(
                shop,
                () -> rows.createNativeQuery(
                                "select cast(" + kind.key() + " as text) from " + kind.table() + " limit 20",
                                String.class)
                        .getResultStream()
                        .map(String.class::cast)
                        .toList());
    }

    static Stream<String> tables() {
        return Stream.of(Recorded.values())
                .flatMap(kind -> Stream.concat(
                        Stream.of(kind.table()), kind.parts().stream().map(Recorded.Hanging::table)))
                .distinct();
    }

    List<String> columns(String table) {
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
    Map<String, List<String>> codes(String table) {
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
