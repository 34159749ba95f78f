package changeover.web.api;

import static changeover.web.AShop.as;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.hasItem;

import changeover.contracts.PostgresForTests;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.Map;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class PartsApiTest {

    static final Map<String, String> BELT =
            Map.of("code", "BLT-4L", "nameEn", "Blower belt", "nameFr", "Courroie", "unit", "EA", "size", "4L-360");

    @Inject
    AShop shops;

    @Test
    void a_part_is_kept_once_and_stands_beside_the_shipped_kinds() {
        var shop = shops.open("CA-ON", "en");
        Sending.twice(shop.office(), shop.api("parts"), BELT)
                .statusCode(201)
                .body("unitName.fr", equalTo("unité"))
                .header("Location", shop.api("parts/BLT-4L"));
        send(shop.office(), shop.api("parts"), BELT).statusCode(422).body("refusals[0].field", equalTo("code"));
        as(shop.technician())
                .get(shop.api("parts"))
                .then()
                .statusCode(200)
                .body("findAll { it.origin == 'own' }.code", hasItem("BLT-4L"))
                .body("findAll { it.origin == 'shipped' }.code", hasItem("filter"));
    }

    @Test
    void the_second_editor_is_told_of_the_first() {
        var shop = shops.open("CA-ON", "en");
        send(shop.office(), shop.api("parts"), BELT).statusCode(201);
        String path = shop.api("parts/BLT-4L");
        String edition = Sending.etag(shop.office(), path);
        var anew = Map.of("nameEn", "Belt", "nameFr", "Courroie", "unit", "C62");
        Sending.put(shop.office(), path, edition, anew).statusCode(200).body("name.en", equalTo("Belt"));
        Sending.put(shop.office(), path, edition, anew).statusCode(422);
    }

    @Test
    void what_is_wrong_is_said_in_the_readers_language() {
        var wrong = Map.of("code", "BLT", "nameEn", "Belt", "nameFr", "Courroie", "kind", "no-such-kind");
        var english = shops.open("CA-ON", "en");
        send(english.office(), english.api("parts"), wrong)
                .statusCode(422)
                .contentType("application/problem+json")
                .body("refusal", equalTo("Choose a kind of part that the catalogue lists."));
        var french = shops.open("CA-QC", "fr");
        send(french.office(), french.api("parts"), wrong)
                .statusCode(422)
                .body("refusal", equalTo("Choisissez une sorte de pièce du catalogue."));
    }

    @Test
    void another_businesses_part_is_not_found_and_a_technician_keeps_none() {
        var shop = shops.open("CA-ON", "en");
        var other = shops.open("CA-ON", "en");
        send(other.office(), other.api("parts"), BELT).statusCode(201);
        as(shop.office()).get(shop.api("parts/BLT-4L")).then().statusCode(404);
        Sending.put(shop.office(), shop.api("parts/BLT-4L"), "\"0\"", Map.of("odd", 1))
                .statusCode(404);
        send(shop.technician(), shop.api("parts"), BELT).statusCode(404);
    }
}
