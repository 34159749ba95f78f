package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;

import changeover.contracts.PostgresForTests;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A Quebec paper is French first, whatever its reader asked for: its reason is asked for in both languages. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class CreditInFrenchTest {

    @Inject
    ABilledShop billed;

    private static String invoice(AShop.Shop shop) {
        return as(shop.owner()).get(shop.api("invoices")).then().extract().path("find { it.number != null }.id");
    }

    @Test
    void the_reason_is_kept_in_both_languages() {
        var shop = billed.open("CA-QC", "en");
        String at = shop.at("money/invoices/" + invoice(shop) + "/credit");
        as(shop.office()).get(at).then().statusCode(200).body(containsString("The same reason in French"));
        String draft = post(shop.office(), at, Map.of("why", "A visit less", "whyFr", "Une visite de moins"))
                .statusCode(303)
                .extract()
                .header("Location")
                .replaceAll("^https?://[^/]*", "");
        as(shop.office()).get(draft).then().body(containsString("A visit less"));
        var english = billed.open("CA-ON", "en");
        as(english.office())
                .get(english.at("money/invoices/" + invoice(english) + "/credit"))
                .then()
                .statusCode(200)
                .body(not(containsString("The same reason in French")));
    }
}
