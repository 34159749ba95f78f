package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;

import changeover.contracts.PostgresForTests;
import changeover.web.ALivedInHome;
import changeover.web.AShop;
import changeover.web.AShop.Shop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** A visit ends waiting for a part: ordered by the technician, arrived, told, used by a second visit, and sent back. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class OrderPagesTest {

    private static final LocalDate TODAY = LocalDate.now(ZoneId.of("America/Toronto"));

    @Inject
    AShop shops;

    @Inject
    ALivedInHome homes;

    static String location(ValidatableResponse response) {
        return response.statusCode(303)
                .extract()
                .header("Location")
                .replaceFirst("^https?://[^/]*", "")
                .replaceFirst("\\?.*", "");
    }

    /** A call's visit that the technician has today. */
    static String visit(Shop shop, UUID home) {
        String visit = location(post(
                shop.office(),
                shop.at("homes/" + home + "/visits"),
                Map.of(
                        "kind", "call",
                        "first", TODAY.toString(),
                        "last", TODAY.toString(),
                        "minutes", "60",
                        "note", "No heat")));
        location(post(
                shop.office(),
                visit + "/appointment",
                Map.of(
                        "technician", shop.technician().toString(),
                        "day", TODAY.toString(),
                        "starts", "09:00",
                        "seen", seen(shop, visit))));
        return visit.substring(visit.lastIndexOf('/') + 1);
    }

    private static String seen(Shop shop, String visit) {
        return as(shop.office())
                .get(visit)
                .then()
                .extract()
                .asString()
                .replaceAll("(?s).*name=\"seen\" value=\"([^\"]*)\".*", "$1");
    }

    static Map<String, Object> typed() {
        var fields = new HashMap<String, Object>();
        fields.put("made", UUID.randomUUID().toString());
        fields.put("operation", UUID.randomUUID().toString());
        fields.put("part", "");
        fields.put("number", "IND-7");
        fields.put("name", "Inducer motor");
        fields.put("quantity", "2");
        fields.put("supplier", "");
        fields.put("expected", TODAY.plusDays(2).toString());
        fields.put("equipment", "");
        return fields;
    }

    private static String first(Shop shop, String path, String pattern) {
        return as(shop.office())
                .get(path)
                .then()
                .statusCode(200)
                .extract()
                .asString()
                .replaceAll("(?s).*?" + pattern + ".*", "$1");
    }

    @Test
    void a_part_goes_from_the_close_out_to_the_second_visit() {
        for (boolean french : List.of(false, true)) {
            Shop shop = shops.open("CA-ON", french ? "fr" : "en");
            UUID home = homes.machines(shop, french ? "fr" : "en").home();
            as(shop.office())
                    .get(shop.at("parts/orders"))
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "Aucune visite n’attend de pièce" : "No visit waits for a part"));
            String visit = visit(shop, home);
            String field = shop.at("field/visits/" + visit);
            as(shop.technician())
                    .get(field + "/closure")
                    .then()
                    .body(containsString(french ? "Pièces posées et commandées" : "Parts used and ordered"));
            as(shop.technician())
                    .get(field + "/parts")
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "Il manque une pièce" : "A part is missing"));
            post(shop.technician(), field + "/parts/orders", typed())
                    .statusCode(422)
                    .body(
                            containsString("value=\"IND-7\""),
                            containsString(french ? "à qui elle est commandée" : "whom it is ordered from"));
            var known = typed();
            known.put("supplier", "Tannery Supply");
            location(post(shop.technician(), field + "/parts/orders", known));
            as(shop.technician())
                    .get(shop.at("field"))
                    .then()
                    .body(containsString(french ? "en attente d’une pièce" : "waiting for a part"));
            as(shop.office())
                    .get(shop.at("season/" + TODAY))
                    .then()
                    .body(containsString(french ? "en attente d’une pièce" : "waiting for a part"));
            as(shop.office()).get(shop.at("homes/" + home)).then().body(containsString("Inducer motor"));
            as(shop.office()).get(shop.at("visits/" + visit)).then().body(containsString("Inducer motor"));
            as(shop.office())
                    .get(shop.at("today"))
                    .then()
                    .body(containsString(french ? "Une pièce est commandée." : "One part is on order."));
            String order =
                    shop.at("parts/orders/" + first(shop, shop.at("parts/orders"), "parts/orders/([0-9a-f-]{36})"));
            String operation = first(shop, order, "name=\"operation\" value=\"([^\"]+)\"");
            String shelf = first(shop, order, "<option value=\"([0-9a-f-]{36})\" selected");
            post(shop.office(), order + "/arrival", Map.of("operation", operation, "arrived", "3", "place", shelf))
                    .statusCode(422)
                    .body(containsString(french ? "Il ne reste que 2" : "Only 2 of this order"));
            location(post(
                    shop.office(), order + "/arrival", Map.of("operation", operation, "arrived", "2", "place", shelf)));
            as(shop.office())
                    .get(order)
                    .then()
                    .body(containsString(french ? "Prévenir le client" : "Tell the customer"));
            location(post(shop.office(), order + "/notice", Map.of("how", "call", "who", "Adèle Fournier-Blake")));
            String second = location(post(shop.office(), order + "/visit", Map.of("minutes", "90", "last", "")));
            as(shop.office())
                    .get(second)
                    .then()
                    .body(
                            containsString(french ? "Deuxième visite, avec" : "Second visit, with"),
                            containsString(order));
            location(post(
                    shop.office(),
                    second + "/appointment",
                    Map.of(
                            "technician", shop.technician().toString(),
                            "day", TODAY.toString(),
                            "starts", "14:00",
                            "seen", seen(shop, second))));
            as(shop.office())
                    .get(shop.at("season/" + TODAY))
                    .then()
                    .body(
                            containsString("Inducer motor (2)"),
                            not(containsString(french ? "en attente d’une pièce" : "waiting for a part")));
            as(shop.office()).get(shop.at("parts/loading")).then().body(containsString("value=\"IND-7=2\""));
            sentBack(shop, order, shelf, french);
            used(shop, second, shelf, french);
        }
    }

    /** One of the two was wrong: it goes to the supplier, who credits it. */
    private static void sentBack(Shop shop, String order, String shelf, boolean french) {
        String operation = first(shop, order + "/returns", "name=\"operation\" value=\"([^\"]+)\"");
        Map<String, String> back = Map.of(
                "operation",
                operation,
                "quantity",
                "1",
                "fromPlace",
                shelf,
                "toPlace",
                "",
                "why",
                "wrong",
                "credit",
                french ? "212,40" : "212.40");
        location(post(shop.office(), order + "/returns", back));
        as(shop.office()).get(shop.at("parts/orders")).then().body(containsString(french ? "212,40" : "212.40"));
        String credit =
                shop.at("parts/returns/" + first(shop, shop.at("parts/orders"), "parts/returns/([0-9a-f-]{36})"));
        post(shop.office(), credit + "/credit", Map.of("how", "refused", "day", TODAY.toString(), "words", ""))
                .statusCode(422);
        location(post(
                shop.office(),
                credit + "/credit",
                Map.of("how", "credited", "day", TODAY.toString(), "amount", "180", "words", "")));
        as(shop.office())
                .get(order)
                .then()
                .body(containsString(french ? "180,00" : "180.00"), containsString(french ? "crédités" : "credited"));
    }

    /** The technician takes the other from the shelf and closes the second visit. */
    private static void used(Shop shop, String second, String shelf, boolean french) {
        String field = second.replace("/visits/", "/field/visits/");
        var taken = new HashMap<String, Object>(Map.of(
                "made", UUID.randomUUID().toString(),
                "taken", "IND-7",
                "used", "2",
                "why", "repair",
                "place", shelf));
        post(shop.technician(), field + "/parts", taken).statusCode(422);
        taken.put("used", "1");
        location(post(shop.technician(), field + "/parts", taken));
        as(shop.technician()).get(field + "/parts").then().body(containsString("1 × Inducer motor"));
        location(post(
                shop.technician(),
                field + "/closure",
                Map.of("made", UUID.randomUUID().toString(), "minutes", "60", "by", "Adèle Fournier-Blake")));
        as(shop.office())
                .get(shop.at("parts/orders"))
                .then()
                .body(
                        containsString(french ? "sa visite est faite" : "its visit was kept"),
                        containsString(french ? "Aucune visite n’attend de pièce" : "No visit waits for a part"));
    }
}
