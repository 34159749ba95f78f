package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.not;

import changeover.contracts.PostgresForTests;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** An invoice that credit notes took back in full was not paid, and nobody is told that it was. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class CreditedPagesTest {

    @Inject
    ABilledShop billed;

    @Test
    void what_was_credited_in_full_is_not_called_paid() {
        for (boolean french : new boolean[] {false, true}) {
            var shop = billed.open("CA-ON", french ? "fr" : "en");
            String id = as(shop.office())
                    .get(shop.api("invoices"))
                    .then()
                    .extract()
                    .path("find { it.number != null && it.state == 'open' }.id");
            String page = shop.at("money/invoices/" + id);
            String credited = french ? "Créditée en entier" : "Credited in full";
            as(shop.office()).get(page).then().body(not(containsString(credited)), containsString(page + "/credit"));
            issue(
                    shop,
                    post(shop.office(), page + "/credit", Map.of("why", "Sold twice"))
                            .statusCode(303)
                            .extract()
                            .header("Location"));
            as(shop.office())
                    .get(page)
                    .then()
                    .body(
                            containsString(credited),
                            not(containsString(french ? ">Payée" : ">Paid")),
                            not(containsString(page + "/credit")),
                            not(containsString("write-off")));
            as(shop.office())
                    .get(shop.api("invoices"))
                    .then()
                    .body("find { it.id == '" + id + "' }.state", equalTo("credited"));
        }
    }

    private static void issue(AShop.Shop shop, String draft) {
        post(shop.office(), draft.replaceAll("^https?://[^/]*|[?#].*$", "") + "/issue", Map.of())
                .statusCode(303);
    }
}
