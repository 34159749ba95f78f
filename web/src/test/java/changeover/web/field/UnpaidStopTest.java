package changeover.web.field;

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

/** The technician reads the office's word at the stop, and no amount. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class UnpaidStopTest {

    @Inject
    AShop shops;

    @Test
    void the_word_and_not_the_amount() {
        for (boolean french : new boolean[] {false, true}) {
            var shop = shops.open("CA-QC", french ? "fr" : "en");
            String visit = PlannedVisit.visit(shop, PlannedVisit.home(shop));
            String customer =
                    as(shop.owner()).get(shop.api("invoices")).then().extract().path("[0].customer");
            String word = french ? "Ne pas servir" : "Do not serve";
            for (String page : new String[] {"field", "field/visits/" + visit}) {
                as(shop.technician()).get(shop.at(page)).then().statusCode(200).body(not(containsString(word)));
            }
            post(
                            shop.office(),
                            shop.at("money/customers/" + customer + "/serving"),
                            Map.of("what", "not", "why", "Three cheques came back"))
                    .statusCode(303);
            for (String page : new String[] {"field", "field/visits/" + visit}) {
                as(shop.technician())
                        .get(shop.at(page))
                        .then()
                        .statusCode(200)
                        .body(containsString(word))
                        .body(not(containsString(french ? "249,00" : "249.00")))
                        .body(not(containsString("cheques came back")));
            }
        }
    }
}
