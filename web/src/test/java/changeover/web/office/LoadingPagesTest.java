package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.PostgresForTests;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** A van is loaded from the shelf in one press, once, and what the shelf lacks stands on the buying list. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class LoadingPagesTest {

    @Inject
    AShop shops;

    @Test
    void a_van_is_loaded_as_far_as_the_shelf_reaches_and_the_rest_is_bought() {
        for (String language : new String[] {"en", "fr"}) {
            AShop.Shop shop = shops.open("CA-QC", language);
            boolean french = language.equals("fr");
            as(shop.office())
                    .get(shop.at("parts/loading"))
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "Aucun camion" : "No van has a visit"));
            post(
                            shop.office(),
                            shop.at("parts"),
                            Map.of("code", "pad-9", "nameEn", "Pad 9", "nameFr", "Tampon 9", "kind", "", "size", ""))
                    .statusCode(303);
            String shelf = place(shop, "shelf");
            String van = place(shop, "van");
            post(
                            shop.office(),
                            shop.at("parts/supply/suppliers"),
                            Map.of("part", "pad-9", "supplier", "Tannery Supply"))
                    .statusCode(303);
            post(
                            shop.office(),
                            shop.at("parts/supply/minimums"),
                            Map.of("part", "pad-9", "place", van, "quantity", french ? "3,5" : "3.5"))
                    .statusCode(303);
            post(
                            shop.office(),
                            shop.at("parts/movements"),
                            Map.of(
                                    "operation", UUID.randomUUID().toString(),
                                    "part", "pad-9",
                                    "quantity", "2",
                                    "fromPlace", "",
                                    "toPlace", shelf))
                    .statusCode(303);
            String page = as(shop.office())
                    .get(shop.at("parts/loading?days=7"))
                    .then()
                    .statusCode(200)
                    .body(containsString("Tannery Supply"))
                    .body(containsString("value=\"pad-9=2\""))
                    .extract()
                    .asString();
            Map<String, String> stale = new HashMap<>(form(page));
            stale.put("seen", "pad-9=1");
            post(shop.office(), shop.at("parts/loading/" + van), stale).statusCode(422);
            Map<String, String> form = form(page);
            post(shop.office(), shop.at("parts/loading/" + van), form).statusCode(303);
            post(shop.office(), shop.at("parts/loading/" + van), form).statusCode(303);
            assertEquals("2", held(shop, van));
            assertEquals(null, held(shop, shelf));
            as(shop.office())
                    .get(shop.at("parts/loading"))
                    .then()
                    .body(containsString(french ? "1,5" : "1.5"))
                    .body(not(containsString("name=\"seen\"")));
            as(shop.office())
                    .get(shop.at("parts/supply"))
                    .then()
                    .statusCode(200)
                    .body(containsString("Mika Tarn " + (french ? "3,5" : "3.5")));
            post(shop.office(), shop.at("parts/supply/minimums"), Map.of("part", "none", "place", van, "quantity", "1"))
                    .statusCode(422);
            as(shop.technician()).get(shop.at("parts/loading")).then().statusCode(404);
        }
    }

    private static Map<String, String> form(String page) {
        Map<String, String> form = new HashMap<>();
        Matcher hidden = Pattern.compile("type=\"hidden\" name=\"(operation|seen|from|days)\" value=\"([^\"]*)\"")
                .matcher(page);
        while (hidden.find()) {
            form.put(hidden.group(1), hidden.group(2));
        }
        return form;
    }

    private static String place(AShop.Shop shop, String kind) {
        as(shop.office()).get(shop.at("parts")).then().statusCode(200);
        return as(shop.owner())
                .get(shop.api("stock"))
                .then()
                .statusCode(200)
                .extract()
                .path("places.find { it.kind == '" + kind + "' }.id");
    }

    private static String held(AShop.Shop shop, String place) {
        return as(shop.owner())
                .get(shop.api("stock"))
                .then()
                .statusCode(200)
                .extract()
                .path("held.find { it.place == '" + place + "' }?.quantity");
    }
}
