package changeover.web.api;

import static changeover.web.AShop.as;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.hasItems;

import changeover.contracts.PostgresForTests;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.Map;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class PricesApiTest {

    @Inject
    AShop shops;

    @Test
    void a_price_holds_from_its_day_until_the_next_one() {
        var shop = shops.open("CA-ON", "en");
        Sending.twice(
                        shop.owner(),
                        shop.api("prices"),
                        Map.of("kind", "labour", "price", "112.00", "from", "2026-01-01"))
                .statusCode(201)
                .body("price.amount", equalTo("112.00"))
                .body("price.currency", equalTo("CAD"));
        send(shop.owner(), shop.api("prices"), Map.of("kind", "labour", "price", "118.50", "from", "2026-07-01"))
                .statusCode(201)
                .body("item", equalTo("hour"));
        on(shop, "2026-06-30", "112.00");
        on(shop, "2026-07-01", "118.50");
        as(shop.office())
                .get(shop.api("prices?day=2025-12-31"))
                .then()
                .statusCode(200)
                .body("size()", equalTo(0));
    }

    private static void on(AShop.Shop shop, String day, String price) {
        as(shop.office())
                .get(shop.api("prices?day=" + day))
                .then()
                .statusCode(200)
                .body("price.amount", equalTo(java.util.List.of(price)));
    }

    @Test
    void what_is_wrong_is_said_in_the_readers_language() {
        var wrong = Map.of("kind", "part", "item", "NONE-1", "price", "1.005");
        var english = shops.open("CA-ON", "en");
        send(english.owner(), english.api("prices"), wrong)
                .statusCode(422)
                .body("refusals.field", hasItems("item", "price"))
                .body("refusal", equalTo("There is no such part."));
        var french = shops.open("CA-QC", "fr");
        send(french.owner(), french.api("prices"), wrong)
                .statusCode(422)
                .body("refusals.code", hasItems("stock.part-not-found", "typed.cents"))
                .body("refusal", equalTo("Cette pièce n’existe pas."));
        as(french.owner()).get(french.api("prices?day=demain")).then().statusCode(422);
    }

    @Test
    void the_owner_sets_prices_the_office_reads_them_the_technician_neither() {
        var shop = shops.open("CA-ON", "en");
        var price = Map.of("kind", "travel", "price", "45");
        send(shop.office(), shop.api("prices"), price).statusCode(404);
        send(shop.technician(), shop.api("prices"), price).statusCode(404);
        as(shop.technician()).get(shop.api("prices")).then().statusCode(404);
        as(shop.office()).get(shop.api("prices")).then().statusCode(200);
    }

    @Test
    void a_file_of_prices_is_looked_at_brought_in_once_and_taken_out_the_same() {
        var shop = shops.open("CA-ON", "en");
        String csv = "kind,item,name,unit,from,price,cost,currency\r\n"
                + "labour,hour,,,2026-01-01,112.00,57.00,CAD\r\n"
                + "travel,no-access,,,2026-01-01,60.00,,CAD\r\n";
        bring(shop, shop.owner(), "dry=true", csv)
                .statusCode(200)
                .body("written", equalTo(0))
                .body("changes.what", equalTo(java.util.List.of("new", "new")))
                .body("changes[0].now.price.amount", equalTo("112.00"));
        bring(shop, shop.owner(), "dry=false", csv).statusCode(200).body("written", equalTo(2));
        bring(shop, shop.owner(), "dry=false", csv)
                .statusCode(200)
                .body("written", equalTo(0))
                .body("unchanged", equalTo(2));
        as(shop.office())
                .get(shop.api("exports/prices.csv"))
                .then()
                .statusCode(200)
                .body(equalTo(csv));
        bring(shop, shop.owner(), "bad=return&from=2027-01-01", "item,price\nNONE,1\n")
                .statusCode(200)
                .body("bad[0].row", equalTo(2))
                .body("bad[0].code", equalTo("pricesfile.item-unknown"));
        bring(shop, shop.owner(), "bad=maybe", csv).statusCode(422);
        bring(shop, shop.office(), "dry=false", csv).statusCode(404);
    }

    private static io.restassured.response.ValidatableResponse bring(
            AShop.Shop shop, java.util.UUID person, String query, String csv) {
        return as(person)
                .header("Operation-Id", java.util.UUID.randomUUID().toString())
                .contentType("text/csv; charset=UTF-8")
                .body(csv.getBytes(java.nio.charset.StandardCharsets.UTF_8))
                .post(shop.api("imports/prices?" + query))
                .then();
    }
}
