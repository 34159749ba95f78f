package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;

import changeover.contracts.PostgresForTests;
import changeover.web.ALivedInHome;
import changeover.web.AShop;
import changeover.web.Shown;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class PlacePagesTest {

    private static final Map<String, String> HOME = Map.of(
            "version", "0",
            "street", "14 Larch Street",
            "city", "Port Ambrose",
            "region", "ON",
            "country", "CA",
            "propertyUse", "residential");

    @Inject
    AShop shops;

    @Inject
    ALivedInHome homes;

    @Test
    void every_page_of_a_home_stands_in_both_languages_and_not_for_another_business() {
        for (String language : new String[] {"en", "fr"}) {
            var shop = shops.open("CA-ON", language);
            var other = shops.open("CA-ON", language);
            var lived = homes.machines(shop, language);
            for (String page : new String[] {"edit", "access", "people", "people?who=adele"}) {
                String path = "homes/" + lived.home() + "/" + page;
                String html = as(shop.office())
                        .header("Accept-Language", language)
                        .get(shop.at(path))
                        .then()
                        .statusCode(200)
                        .extract()
                        .asString();
                Shown.keep(page.replace('?', '-') + "-" + language, html);
                as(other.office()).get(other.at(path)).then().statusCode(404);
            }
            for (String page : new String[] {"", "/edit"}) {
                String path = "customers/" + lived.customer() + page;
                String html = as(shop.office())
                        .header("Accept-Language", language)
                        .get(shop.at(path))
                        .then()
                        .statusCode(200)
                        .body(containsString("Adèle Fournier-Blake"))
                        .extract()
                        .asString();
                Shown.keep("customer" + page.replace('/', '-') + "-" + language, html);
                as(other.office()).get(other.at(path)).then().statusCode(404);
            }
        }
    }

    @Test
    void a_home_is_changed_and_what_is_wrong_comes_back_as_typed() {
        var shop = shops.open("CA-ON", "en");
        var lived = homes.machines(shop, "en");
        String path = shop.at("homes/" + lived.home());
        var wrong = new HashMap<>(HOME);
        wrong.put("builtIn", "last year");
        wrong.put("gettingIn", "<i>round the back</i>");
        post(shop.office(), path, wrong)
                .statusCode(422)
                .body(containsString("last year"))
                .body(containsString("&lt;i&gt;round the back"));
        var right = new HashMap<>(HOME);
        right.put("gettingIn", "Round the back.");
        post(shop.office(), path, right).statusCode(303);
        as(shop.office()).get(path).then().body(containsString("Round the back."));
        post(shop.office(), path, right).statusCode(422);
    }

    @Test
    void dangers_and_codes_come_and_go() {
        var shop = shops.open("CA-ON", "en");
        var lived = homes.machines(shop, "en");
        String path = shop.at("homes/" + lived.home());
        post(shop.office(), path + "/hazards", Map.of("kind", "other", "note", ""))
                .statusCode(422);
        post(shop.office(), path + "/hazards", Map.of("kind", "ladder", "note", "Rotten rungs"))
                .statusCode(303);
        post(shop.office(), path + "/codes", Map.of("kind", "alarm", "label", "hall", "secret", ""))
                .statusCode(422);
        post(shop.office(), path + "/codes", Map.of("kind", "alarm", "label", "hall", "secret", "9753"))
                .statusCode(303);
        String page = as(shop.office())
                .get(path + "/access")
                .then()
                .statusCode(200)
                .body(containsString("Rotten rungs"))
                .body(containsString("hall"))
                .body(not(containsString("9753")))
                .extract()
                .asString();
        for (String clearing : all(page, "/hazards/[0-9a-f-]{36}/clearing")) {
            post(shop.office(), path + clearing, Map.of()).statusCode(303);
        }
        for (String removal : all(page, "/codes/[0-9a-f-]{36}/removal")) {
            post(shop.office(), path + removal, Map.of()).statusCode(303);
        }
        as(shop.office())
                .get(path + "/access")
                .then()
                .body(containsString("No hazard is known."))
                .body(containsString("None kept."));
        as(shop.owner()).get(path + "/changes").then().statusCode(200).body(not(containsString("9753")));
        as(shop.office()).get(path + "/changes").then().statusCode(404);
    }

    @Test
    void another_pays_from_a_day_and_an_occupant_leaves() {
        var shop = shops.open("CA-ON", "en");
        var lived = homes.machines(shop, "en");
        String path = shop.at("homes/" + lived.home() + "/people");
        post(shop.office(), path, Map.of("name", "Owner of flats", "from", "2026-06-01", "language", "en"))
                .statusCode(422)
                .body(containsString("Owner of flats"));
        post(
                        shop.office(),
                        path,
                        Map.of(
                                "name",
                                "Larch Street Holdings",
                                "language",
                                "en",
                                "part",
                                "pays",
                                "from",
                                "2026-06-01",
                                "purchaseOrder",
                                "PO-17"))
                .statusCode(303);
        String page = as(shop.office())
                .get(path)
                .then()
                .body(containsString("Larch Street Holdings"))
                .body(containsString("PO-17"))
                .extract()
                .asString();
        List<String> endings = all(page, "/people/[0-9a-f-]{36}/ending");
        String home = shop.at("homes/" + lived.home());
        post(shop.office(), home + endings.getLast(), Map.of("last", "1999-01-01"))
                .statusCode(422);
        post(shop.office(), home + endings.getLast(), Map.of("last", "2026-10-31"))
                .statusCode(303);
    }

    @Test
    void a_triplex_has_homes_a_payer_and_machines_in_common() {
        var shop = shops.open("CA-QC", "fr");
        var lived = homes.machines(shop, "fr");
        as(shop.office()).get(shop.at("buildings")).then().statusCode(200);
        as(shop.office()).get(shop.at("buildings/new")).then().statusCode(200);
        post(shop.office(), shop.at("buildings"), Map.of("name", "Triplex", "street", ""))
                .statusCode(422);
        String building = post(
                        shop.office(),
                        shop.at("buildings"),
                        Map.of(
                                "name", "Le triplex des Mélèzes",
                                "street", "14 Larch Street",
                                "city", "Port Ambrose",
                                "region", "QC",
                                "country", "CA"))
                .statusCode(303)
                .extract()
                .header("Location")
                .replaceAll(".*(/shop-[^?]*).*", "$1");
        var moved = new HashMap<>(HOME);
        moved.put("building", building.substring(building.lastIndexOf('/') + 1));
        post(shop.office(), shop.at("homes/" + lived.home()), moved).statusCode(303);
        post(
                        shop.office(),
                        building + "/machines",
                        Map.of("kind", "rooftop-unit", "name", "Unité de toit", "fits.belt", "A42"))
                .statusCode(303);
        String page = as(shop.office())
                .header("Accept-Language", "fr")
                .get(building)
                .then()
                .statusCode(200)
                .body(containsString("Unité de toit"))
                .body(containsString("Adèle Fournier-Blake"))
                .extract()
                .asString();
        Shown.keep("building-fr", page);
        as(shop.office()).get(shop.at("homes/" + lived.home())).then().body(containsString("Unité de toit"));
        var other = shops.open("CA-QC", "fr");
        as(other.office())
                .get(other.at("buildings/" + moved.get("building")))
                .then()
                .statusCode(404);
    }

    private static List<String> all(String page, String pattern) {
        return java.util.regex.Pattern.compile(pattern)
                .matcher(page)
                .results()
                .map(java.util.regex.MatchResult::group)
                .toList();
    }
}
