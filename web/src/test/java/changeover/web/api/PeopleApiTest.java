package changeover.web.api;

import static changeover.web.AShop.as;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.not;
import static org.hamcrest.CoreMatchers.notNullValue;

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
class PeopleApiTest {

    @Inject
    AShop shops;

    private static Map<String, String> somebody() {
        return new HashMap<>(Map.of(
                "name",
                "Ines Vale",
                "email",
                "ines-" + UUID.randomUUID() + "@example.com",
                "role",
                "technician",
                "language",
                "fr"));
    }

    @Test
    void somebody_is_invited_given_a_ticket_another_role_and_a_last_day() {
        var shop = shops.open("CA-ON", "en");
        String id = Sending.twice(shop.owner(), shop.api("people"), somebody())
                .statusCode(201)
                .body("waiting", equalTo(false))
                .body("$", not(org.hamcrest.Matchers.hasKey("oneTimePassword")))
                .extract()
                .path("id");
        String path = shop.api("people/" + id);
        Sending.twice(shop.owner(), path + "/tickets", Map.of("kind", "gas", "number", "G-27", "expires", "2030-05-01"))
                .statusCode(200)
                .body("tickets[0].expires", equalTo("2030-05-01"));
        String edition = Sending.etag(shop.owner(), path);
        var anew = Map.of("name", "Inès Vale", "language", "fr", "role", "office", "phone", "555-0123");
        Sending.put(shop.owner(), path, edition, anew).statusCode(200).body("role", equalTo("office"));
        Sending.put(shop.owner(), path, edition, anew).statusCode(422);
        Sending.twice(shop.owner(), path + "/ending", Map.of("day", "2030-01-31"))
                .statusCode(200)
                .body("lastDay", equalTo("2030-01-31"));
        as(shop.office()).get(path).then().statusCode(200).body("email", notNullValue());
    }

    @Test
    void what_is_wrong_is_said_in_the_readers_language() {
        var wrong = somebody();
        wrong.put("email", "ines at example");
        var english = shops.open("CA-ON", "en");
        send(english.owner(), english.api("people"), wrong)
                .statusCode(422)
                .body("refusals[0].field", equalTo("email"))
                .body("refusal", equalTo("Write a mail address like name@example.com."));
        var french = shops.open("CA-QC", "fr");
        send(french.owner(), french.api("people/" + french.owner() + "/ending"), Map.of("day", "2030-01-31"))
                .statusCode(422)
                .body("refusals[0].code", equalTo("people.not-yourself"));
        Sending.put(
                        french.owner(),
                        french.api("people/" + french.owner()),
                        "\"0\"",
                        Map.of("name", "Odile Roe", "language", "fr", "role", "office"))
                .statusCode(422)
                .body("refusal", containsString("votre propre rôle"));
    }

    @Test
    void a_technician_sees_themselves_and_invites_nobody() {
        var shop = shops.open("CA-ON", "en");
        as(shop.technician())
                .get(shop.api("people"))
                .then()
                .statusCode(200)
                .body("id", equalTo(List.of(shop.technician().toString())));
        as(shop.technician()).get(shop.api("people/" + shop.owner())).then().statusCode(404);
        send(shop.technician(), shop.api("people"), somebody()).statusCode(404);
        send(shop.office(), shop.api("people"), somebody()).statusCode(404);
    }

    @Test
    void another_businesses_people_are_not_found() {
        var shop = shops.open("CA-ON", "en");
        var other = shops.open("CA-ON", "en");
        as(shop.owner()).get(shop.api("people/" + other.office())).then().statusCode(404);
        send(shop.owner(), shop.api("people/" + other.office() + "/tickets"), Map.of("odd", 1))
                .statusCode(404);
    }
}
