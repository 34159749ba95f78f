package changeover.web.office;

import static changeover.web.AShop.as;
import static org.hamcrest.CoreMatchers.containsString;

import changeover.contracts.PostgresForTests;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.UUID;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class MoneyPagesTest {

    @Inject
    AShop shops;

    @Test
    void an_empty_shop_is_told_where_drafts_come_from() {
        var shop = shops.open("CA-QC", "fr");
        as(shop.office())
                .get(shop.at("money"))
                .then()
                .statusCode(200)
                .body(containsString("Aucun brouillon"))
                .body(containsString("0,00\u00a0$"));
        for (String page : new String[] {"money/documents", "money/payments/new"}) {
            as(shop.office()).get(shop.at(page)).then().statusCode(200);
        }
    }

    @Test
    void what_is_not_here_is_not_found() {
        var shop = shops.open("CA-ON", "en");
        for (String page : new String[] {"money/invoices/", "money/customers/"}) {
            as(shop.office()).get(shop.at(page + UUID.randomUUID())).then().statusCode(404);
        }
        as(shop.office())
                .get(shop.at("money/payments/new?customer=" + UUID.randomUUID()))
                .then()
                .statusCode(404);
    }
}
