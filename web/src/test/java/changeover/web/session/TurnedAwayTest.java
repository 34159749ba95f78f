package changeover.web.session;

import static changeover.web.AShop.as;
import static org.hamcrest.CoreMatchers.containsString;

import changeover.contracts.PostgresForTests;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import jakarta.inject.Inject;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class TurnedAwayTest {

    @Inject
    AShop shops;

    @Test
    void a_form_without_its_mark_is_turned_away_with_a_sentence() {
        for (boolean french : new boolean[] {false, true}) {
            var shop = shops.open("CA-QC", french ? "fr" : "en");
            as(shop.office())
                    .contentType(ContentType.URLENC.withCharset("UTF-8"))
                    .formParam("street", "9 Tannery Row")
                    .post(shop.at("homes"))
                    .then()
                    .statusCode(400)
                    .contentType(ContentType.HTML)
                    .body(containsString(french ? "restée ouverte trop longtemps" : "stood open too long"));
        }
    }
}
