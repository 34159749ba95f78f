package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;

import changeover.contracts.PostgresForTests;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Every way of settling is shown before an agreement ends; then its credit notes are written. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class SettlementPagesTest {

    @Inject
    ABilledShop billed;

    @Test
    void what_ending_would_cost_is_shown_and_then_settled() {
        for (String language : new String[] {"en", "fr"}) {
            var shop = billed.open("CA-QC", language);
            boolean french = language.equals("fr");
            String home =
                    as(shop.owner()).get(shop.api("invoices")).then().extract().path("find { it.kind == 'plan' }.home");
            String agreement = as(shop.owner())
                    .get(shop.api("agreements?home=" + home))
                    .then()
                    .statusCode(200)
                    .extract()
                    .path("[0].id");
            String at = shop.at("agreements/" + agreement + "/settlement");
            String page = as(shop.office())
                    .get(at)
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "par travail fait" : "by work done"))
                    .extract()
                    .asString();
            String day = page.replaceAll("(?s).*?name=\"day\"[^>]*value=\"([0-9-]{10})\".*", "$1");
            as(shop.office()).get(at + "?day=soon").then().statusCode(422);
            post(shop.office(), at, Map.of("way", "pro-rata", "why", "Moved away"))
                    .statusCode(422);
            post(shop.owner(), shop.at("agreements/" + agreement + "/ending"), Map.of("day", day, "why", "Moved away"))
                    .statusCode(303);
            as(shop.office()).get(at).then().body(containsString(french ? "Elle a pris fin" : "It ended on"));
            post(shop.office(), at, Map.of("way", "work-done", "why", "")).statusCode(422);
            String next = post(shop.office(), at, Map.of("way", "work-done", "why", "Moved away"))
                    .statusCode(303)
                    .extract()
                    .header("Location");
            as(shop.office())
                    .get(next.replaceAll("^https?://[^/]*", ""))
                    .then()
                    .statusCode(200)
                    .body(containsString("Moved away"));
            as(shop.office())
                    .get(at)
                    .then()
                    .body(containsString(french ? "Elle a été réglée le" : "It was settled on"));
        }
    }
}
