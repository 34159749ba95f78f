package changeover.web.api;

import static changeover.web.AShop.as;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.hasItems;

import changeover.contracts.PostgresForTests;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class SeasonsApiTest {

    private static final Map<String, Object> LEAVES = Map.of(
            "code", "leaves",
            "nameEn", "leaf fall",
            "nameFr", "chute des feuilles",
            "first", "10-01",
            "last", "--11-10",
            "basis", "ten autumns of our own calls");

    @Inject
    AShop shops;

    private static String cooling(AShop.Shop shop) {
        return as(shop.office())
                .get(shop.api("seasons"))
                .then()
                .statusCode(200)
                .extract()
                .path("find { it.code == 'cooling' }.id");
    }

    @Test
    void the_shipped_seasons_stand_there_and_one_of_its_own_is_added_once() {
        var shop = shops.open("CA-ON", "en");
        Sending.twice(shop.owner(), shop.api("seasons"), LEAVES)
                .statusCode(201)
                .body("first", equalTo("--10-01"))
                .body("shipped", equalTo(null))
                .body("basis", equalTo("ten autumns of our own calls"));
        as(shop.technician())
                .get(shop.api("seasons"))
                .then()
                .statusCode(200)
                .body("code", hasItems("cooling", "heating", "warm", "leaves"))
                .body("find { it.code == 'cooling' }.shipped.last", equalTo("--06-15"));
        send(shop.owner(), shop.api("seasons"), LEAVES).statusCode(422).body("refusal", containsString("that code"));
    }

    @Test
    void a_season_is_moved_with_its_basis_on_the_edition_that_was_read() {
        var shop = shops.open("CA-ON", "en");
        String path = shop.api("seasons/" + cooling(shop));
        String edition = Sending.etag(shop.owner(), path);
        var moved = new HashMap<String, Object>(Map.of(
                "nameEn", "cooling changeover",
                "nameFr", "passage à la climatisation",
                "first", "03-15",
                "last", "05-31",
                "changeover", "cooling"));
        Sending.put(shop.owner(), path, edition, moved).statusCode(422).body("refusals[0].field", equalTo("basis"));
        moved.put("basis", "Environment Canada, days above 20 °C, 2005 to 2024");
        Sending.put(shop.owner(), path, edition, moved).statusCode(200).body("first", equalTo("--03-15"));
        Sending.put(shop.owner(), path, edition, moved).statusCode(422);
    }

    @Test
    void what_is_wrong_is_said_in_the_readers_language() {
        var wrong = new HashMap<>(LEAVES);
        wrong.put("first", "31 October");
        var english = shops.open("CA-ON", "en");
        send(english.owner(), english.api("seasons"), wrong)
                .statusCode(422)
                .body("refusal", equalTo("Write a day without a year as month-day: 04-01."));
        wrong.put("first", "02-30");
        var french = shops.open("CA-QC", "fr");
        send(french.owner(), french.api("seasons"), wrong)
                .statusCode(422)
                .body("refusal", equalTo("Écrivez un jour sans année, mois-jour\u00a0: 04-01."));
    }

    @Test
    void another_businesses_season_is_not_found_and_only_the_owner_writes() {
        var shop = shops.open("CA-ON", "en");
        var other = shops.open("CA-ON", "en");
        String theirs = shop.api("seasons/" + cooling(other));
        as(shop.owner()).get(theirs).then().statusCode(404);
        Sending.put(shop.owner(), theirs, "\"0\"", Map.of("odd", 1)).statusCode(404);
        send(shop.office(), shop.api("seasons"), LEAVES).statusCode(404);
        send(shop.technician(), shop.api("seasons"), LEAVES).statusCode(404);
    }
}
