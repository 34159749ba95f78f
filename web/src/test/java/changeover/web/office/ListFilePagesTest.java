package changeover.web.office;

import static changeover.web.AShop.as;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;

import changeover.contracts.PostgresForTests;
import changeover.web.session.ListFile;
import changeover.web.walls.ALivedInShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class ListFilePagesTest {

    @Inject
    ALivedInShop lived;

    @Test
    void every_list_of_a_lived_in_business_is_taken_out_with_its_rows() {
        for (var one : List.of(lived.ours(), lived.theirs())) {
            var shop = one.shop();
            as(shop.owner())
                    .get(shop.at("shop/lists"))
                    .then()
                    .statusCode(200)
                    .body(not(containsString("part-orders<")));
            for (ListFile list : ListFile.values()) {
                String page = as(shop.owner())
                        .get(shop.at("shop/lists/" + list.code()))
                        .then()
                        .statusCode(200)
                        .header("Content-Disposition", containsString(list.code() + ".csv"))
                        .extract()
                        .asString();
                org.junit.jupiter.api.Assertions.assertTrue(
                        page.strip().split("\r\n").length > 1, list + " has no row: " + page);
                if (list == ListFile.PAYMENTS || list == ListFile.INVOICES) {
                    org.junit.jupiter.api.Assertions.assertTrue(
                            page.matches("(?s)(?!.*_minor).*,-?\\d+\\.\\d\\d,.*"), list + " holds its money: " + page);
                }
                as(shop.owner())
                        .get(shop.api("exports/lists/" + list.code()))
                        .then()
                        .statusCode(200)
                        .body(containsString(page.substring(0, page.indexOf('\r'))));
                as(shop.technician())
                        .get(shop.at("shop/lists/" + list.code()))
                        .then()
                        .statusCode(404);
            }
            as(shop.owner()).get(shop.at("shop/lists/none")).then().statusCode(404);
        }
    }
}
