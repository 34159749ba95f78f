package changeover.web.api;

import static changeover.web.AShop.as;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;

import changeover.contracts.PostgresForTests;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class StockApiTest {

    @Inject
    AShop shops;

    private AShop.Shop open(String region, String language) {
        var shop = shops.open(region, language);
        send(shop.office(), shop.api("parts"), PartsApiTest.BELT).statusCode(201);
        return shop;
    }

    private static String place(AShop.Shop shop, String kind) {
        return as(shop.office())
                .get(shop.api("stock"))
                .then()
                .statusCode(200)
                .extract()
                .path("places.find { it.kind == '" + kind + "' }.id");
    }

    private static Map<String, Object> belts(String kind, String quantity, Map<String, String> places) {
        var asked = new HashMap<String, Object>(places);
        asked.put("kind", kind);
        asked.put("parts", List.of(Map.of("part", "BLT-4L", "quantity", quantity)));
        return asked;
    }

    @Test
    void parts_come_change_place_and_are_counted_once_each() {
        var shop = open("CA-ON", "en");
        String shelf = place(shop, "shelf");
        String van = place(shop, "van");
        Sending.twice(shop.office(), shop.api("stock"), belts("receipt", "12", Map.of("to", shelf)))
                .statusCode(201)
                .body("held[0].quantity", equalTo("12"));
        Sending.twice(shop.office(), shop.api("stock"), belts("move", "4", Map.of("from", shelf, "to", van)))
                .statusCode(201);
        Sending.twice(shop.office(), shop.api("stock"), belts("count", "7.5", Map.of("at", shelf, "why", "yearly")))
                .statusCode(201);
        held(shop.office(), shop, "?place=" + shelf, List.of("7.5"));
        held(shop.office(), shop, "?part=BLT-4L&place=" + van, List.of("4"));
        held(shop.office(), shop, "?day=2020-01-01", List.of());
        held(shop.technician(), shop, "", List.of("4"));
        as(shop.technician()).get(shop.api("stock?place=" + shelf)).then().statusCode(404);
    }

    private static void held(UUID person, AShop.Shop shop, String query, List<String> quantities) {
        as(person).get(shop.api("stock" + query)).then().statusCode(200).body("held.quantity", equalTo(quantities));
    }

    @Test
    void below_nought_needs_a_reason_in_the_readers_language() {
        var english = open("CA-ON", "en");
        var places = Map.of("from", place(english, "shelf"), "to", place(english, "van"));
        send(english.office(), english.api("stock"), belts("move", "1", places))
                .statusCode(422)
                .body("refusal", containsString("Only 0 of BLT-4L are there."));
        var named = new HashMap<>(places);
        named.put("why", "counted wrong last week");
        send(english.office(), english.api("stock"), belts("move", "1", named)).statusCode(201);
        var french = open("CA-QC", "fr");
        var count = belts("count", "1", Map.of("at", place(french, "shelf")));
        send(french.office(), french.api("stock"), count)
                .statusCode(422)
                .body("refusals[0].field", equalTo("why"))
                .body("refusal", equalTo("Écrivez quelque chose ici."));
    }

    @Test
    void another_businesses_shelf_is_not_found_and_a_technician_moves_nothing() {
        var shop = open("CA-ON", "en");
        var other = open("CA-ON", "en");
        var theirs = belts("receipt", "-1", Map.of("to", place(other, "shelf"), "odd", "member"));
        send(shop.office(), shop.api("stock"), theirs).statusCode(404);
        as(shop.office())
                .get(shop.api("stock?place=" + place(other, "shelf")))
                .then()
                .statusCode(404);
        send(shop.technician(), shop.api("stock"), belts("receipt", "1", Map.of("to", place(shop, "shelf"))))
                .statusCode(404);
    }
}
