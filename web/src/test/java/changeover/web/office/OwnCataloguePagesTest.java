package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.catalogue.Band;
import changeover.contracts.catalogue.Cadence;
import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.Task;
import changeover.web.AShop;
import changeover.web.session.Said;
import changeover.web.session.Typed;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.ws.rs.core.MultivaluedHashMap;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class OwnCataloguePagesTest {

    @Inject
    AShop shops;

    @Inject
    OwnCatalogue catalogue;

    @Test
    void a_kind_and_a_task_of_ones_own_are_added_changed_withdrawn_and_offered_again() {
        for (String language : List.of("en", "fr")) {
            var shop = shops.open("CA-QC", language);
            String kind = added(shop, "kinds", kind());
            as(shop.owner()).get(kind).then().statusCode(200).body(containsString("salt = salt = sel"));
            String task = added(shop, "tasks", task());
            String figure = language.equals("fr") ? "34,5" : "34.5";
            as(shop.owner()).get(task).then().body(containsString(figure));
            Task kept = trade(shop).tasksFor("pool-heater", Map.of()).getFirst();
            assertEquals(new Cadence.EveryMonths(6, 5, 7), kept.cadence());
            assertEquals(
                    new Band.Fixed(new BigDecimal("20"), new BigDecimal("34.5")),
                    kept.readings().getFirst().band());
            assertEquals(
                    new Band.PlateTolerance("volts", new BigDecimal("10")),
                    kept.readings().get(1).band());
            assertEquals("filter", kept.parts().getFirst().part());

            var changed = task();
            changed.put("version", "0");
            changed.put("minutes", "25");
            post(shop.owner(), task, changed).statusCode(303);
            post(shop.owner(), task, changed).statusCode(422);
            assertEquals(25, trade(shop).task("pool-rinse").minutes());

            String plan = plan(shop);
            post(shop.owner(), task + "/withdrawal", Map.of()).statusCode(303);
            as(shop.office()).get(plan).then().body(containsString("value=\"pool-rinse\" checked"));
            post(shop.owner(), kind + "/withdrawal", Map.of()).statusCode(303);
            assertTrue(trade(shop).tasksFor("pool-heater", Map.of()).isEmpty());
            assertTrue(trade(shop).kinds().stream().noneMatch(one -> one.code().equals("pool-heater")));
            assertEquals(25, trade(shop).task("pool-rinse").minutes());
            as(shop.owner()).get(task).then().body(containsString("value=\"pool-heater\" checked"));
            as(shop.office())
                    .get(shop.at("shop/kinds"))
                    .then()
                    .body(containsString(language.equals("fr") ? "retirée le" : "withdrawn"));
            post(shop.owner(), task + "/return", Map.of()).statusCode(303);
            post(shop.owner(), kind + "/return", Map.of()).statusCode(303);
            assertEquals(1, trade(shop).tasksFor("pool-heater", Map.of()).size());
            as(shop.owner()).get(shop.at("changes/kinds")).then().statusCode(200);
        }
    }

    @Test
    void what_is_wrong_in_a_kind_is_said_at_its_row_and_stays_as_typed() {
        var shop = shops.open("CA-ON", "en");
        var typed = kind();
        typed.put("code", "Pool Heater");
        typed.put("plate-3-name", "watts");
        typed.put("plate-3-en", "watts <b>");
        typed.put("plate-3-fr", "watts");
        typed.put("plate-3-form", "number");
        typed.put("fits-0-choices", "salt");
        post(shop.owner(), shop.at("shop/kinds/new"), typed)
                .statusCode(422)
                .body(containsString("fits-0-choices-wrong"))
                .body(containsString("watts &lt;b&gt;"));
        typed.put("fits-0-choices", "salt = salt = sel");
        post(shop.owner(), shop.at("shop/kinds/new"), typed)
                .statusCode(422)
                .body(containsString("code-wrong"))
                .body(containsString("plate-3-unit-wrong"))
                .body(containsString("A number needs its unit"));
    }

    @Test
    void what_is_wrong_in_a_task_is_said_at_its_field_and_stays_as_typed() {
        var shop = shops.open("CA-ON", "en");
        added(shop, "kinds", kind());
        wrong(shop, Map.of("kinds", "nothing-such"), "kinds-wrong");
        wrong(shop, Map.of("who", "household", "ticket", "gas"), "ticket-wrong");
        wrong(shop, Map.of("minutes", "0"), "minutes-wrong");
        wrong(shop, Map.of("min", "9"), "months-wrong");
        wrong(shop, Map.of("how", "each-season"), "seasons-wrong");
        wrong(shop, Map.of("how", "each-season", "seasons", "monsoon"), "seasons-wrong");
        wrong(shop, Map.of("caution", "dragon"), "caution-wrong");
        wrong(shop, Map.of("basis", "A maker’s manual"), "source-wrong");
        wrong(shop, Map.of("reading-0-unit", ""), "reading-0-unit-wrong");
        wrong(shop, Map.of("reading-0-low", "40"), "reading-0-high-wrong");
        wrong(shop, Map.of("reading-0-beyondEn", "", "reading-0-beyondFr", ""), "reading-0-beyondEn-wrong");
        wrong(shop, Map.of("reading-2-plate", "no-such"), "reading-2-plate-wrong");
        wrong(shop, Map.of("reading-2-code", "inlet"), "reading-2-code-wrong");
        wrong(shop, Map.of("part-0-kind", "dragon"), "part-0-kind-wrong");
        wrong(shop, Map.of("part-0-quantity", "0"), "part-0-quantity-wrong");
    }

    @Test
    void every_shipped_task_comes_back_from_the_form_as_it_went_in() {
        for (Task task : Catalogue.shipped().tasks()) {
            Said filled = OwnTaskForm.filled(task, Locale.CANADA_FRENCH);
            var fields = new MultivaluedHashMap<String, String>();
            filled.values().forEach((name, values) -> fields.put(name, List.copyOf(values)));
            assertEquals(task, new OwnTaskForm(new Typed(fields)).read(task), task.code());
        }
    }

    @Test
    void only_the_owner_writes_and_what_is_not_here_is_not_found() {
        var shop = shops.open("CA-ON", "en");
        var other = shops.open("CA-ON", "en");
        String theirs = added(other, "kinds", kind()).replace(other.slug(), shop.slug());
        for (String path : List.of(theirs, shop.at("shop/tasks/" + UUID.randomUUID()))) {
            as(shop.owner()).get(path).then().statusCode(404);
            post(shop.owner(), path, Map.of("version", "0")).statusCode(404);
            post(shop.owner(), path + "/withdrawal", Map.of()).statusCode(404);
            post(shop.owner(), path + "/return", Map.of()).statusCode(404);
        }
        as(shop.office()).get(shop.at("shop/kinds")).then().statusCode(200).body(not(containsString("shop/kinds/new")));
        post(shop.office(), shop.at("shop/kinds/new"), kind()).statusCode(404);
        as(shop.technician()).get(shop.at("shop/kinds")).then().statusCode(404);
    }

    private void wrong(AShop.Shop shop, Map<String, String> instead, String field) {
        var typed = task();
        typed.putAll(instead);
        post(shop.owner(), shop.at("shop/tasks/new"), typed)
                .statusCode(422)
                .body(containsString("\"" + field + "\""))
                .body(containsString("Rinse the cell"));
    }

    private Catalogue trade(AShop.Shop shop) {
        return shops.in(shop, catalogue::catalogue);
    }

    private static String plan(AShop.Shop shop) {
        var fields = new HashMap<>(Map.of("code", "pool", "nameEn", "Pool", "nameFr", "Piscine", "visits", "2"));
        fields.putAll(Map.of("price", "120.00", "discountPercent", "0", "instalments", "1", "includedMinutes", "0"));
        fields.put("tasks", "pool-rinse");
        return created(shop, "plans/new", fields);
    }

    private static String added(AShop.Shop shop, String what, Map<String, String> fields) {
        return created(shop, "shop/" + what + "/new", fields);
    }

    private static String created(AShop.Shop shop, String form, Map<String, String> fields) {
        return post(shop.owner(), shop.at(form), fields)
                .statusCode(303)
                .extract()
                .header("Location")
                .replaceFirst("^https?://[^/]+", "")
                .replaceFirst("\\?.*", "");
    }

    private static Map<String, String> kind() {
        var fields = new HashMap<String, String>();
        fields.put("code", "pool-heater");
        fields.put("wordingEn", "Pool heater");
        fields.put("wordingFr", "Chauffe-piscine");
        fields.put("fits-0-name", "cell");
        fields.put("fits-0-en", "cell");
        fields.put("fits-0-fr", "cellule");
        fields.put("fits-0-form", "choice");
        fields.put("fits-0-choices", "salt = salt = sel\nplain = plain = simple");
        fields.put("plate-0-name", "volts");
        fields.put("plate-0-en", "volts");
        fields.put("plate-0-fr", "volts");
        fields.put("plate-0-form", "number");
        fields.put("plate-0-unit", "V");
        return fields;
    }

    private static Map<String, String> task() {
        var fields = new HashMap<String, String>();
        fields.put("code", "pool-rinse");
        fields.put("kinds", "pool-heater");
        fields.put("wordingEn", "Rinse the cell");
        fields.put("wordingFr", "Rincer la cellule");
        fields.put("who", "technician");
        fields.put("ticket", "electrical");
        fields.put("minutes", "20");
        fields.put("how", "every-months");
        fields.put("months", "6");
        fields.put("min", "5");
        fields.put("max", "7");
        fields.put("reading-0-code", "inlet");
        fields.put("reading-0-en", "Water in");
        fields.put("reading-0-fr", "Eau à l’entrée");
        fields.put("reading-0-form", "number");
        fields.put("reading-0-unit", "degC");
        fields.put("reading-0-stateEn", "running ten minutes");
        fields.put("reading-0-stateFr", "en marche depuis dix minutes");
        fields.put("reading-0-band", "fixed");
        fields.put("reading-0-low", "20");
        fields.put("reading-0-high", "34.5");
        fields.put("reading-0-limitHigh", "40");
        fields.put("reading-0-beyondEn", "Stop it and look for the flow.");
        fields.put("reading-0-beyondFr", "L’arrêter et chercher le débit.");
        fields.put("reading-2-code", "supply");
        fields.put("reading-2-en", "Volts");
        fields.put("reading-2-fr", "Volts");
        fields.put("reading-2-form", "number");
        fields.put("reading-2-unit", "V");
        fields.put("reading-2-band", "plate-tolerance");
        fields.put("reading-2-plate", "volts");
        fields.put("reading-2-percent", "10");
        fields.put("reading-2-beyondEn", "Call the utility.");
        fields.put("reading-2-beyondFr", "Appeler le distributeur.");
        fields.put("part-0-kind", "filter");
        fields.put("part-0-quantity", "1");
        fields.put("part-0-eachTime", "yes");
        fields.put("basis", "");
        fields.put("source", "");
        return fields;
    }
}
