package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;

import changeover.contracts.PostgresForTests;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class RowsPagesTest {

    @Inject
    AShop shops;

    @Test
    void every_page_of_rows_stands_in_both_languages() {
        for (var shop : List.of(shops.open("CA-QC", "fr"), shops.open("CA-ON", "en"))) {
            for (String page : List.of("shop/prices", "shop/taxes", "shop/mail", "parts")) {
                as(shop.owner()).get(shop.at(page)).then().statusCode(200);
            }
        }
    }

    @Test
    void a_part_is_added_received_moved_and_counted() {
        var shop = shops.open("CA-ON", "en");
        post(
                        shop.office(),
                        shop.at("parts"),
                        Map.of("code", "FIL-1", "nameEn", "Filter", "nameFr", "Filtre", "kind", "", "size", ""))
                .statusCode(303);
        String page = as(shop.office()).get(shop.at("parts")).then().extract().asString();
        String shelf = page.replaceAll("(?s).*name=\"toPlace\".*?option value=\"([0-9a-f-]{36})\".*", "$1");
        var receipt = Map.of(
                "operation",
                UUID.randomUUID().toString(),
                "part",
                "FIL-1",
                "quantity",
                "12",
                "fromPlace",
                "",
                "toPlace",
                shelf);
        post(shop.office(), shop.at("parts/movements"), receipt).statusCode(303);
        post(shop.office(), shop.at("parts/movements"), receipt).statusCode(303);
        as(shop.office()).get(shop.at("parts")).then().body(containsString(">12<"));
        post(
                        shop.office(),
                        shop.at("parts/counts"),
                        Map.of(
                                "operation",
                                UUID.randomUUID().toString(),
                                "countPart",
                                "FIL-1",
                                "countPlace",
                                shelf,
                                "counted",
                                "11",
                                "why",
                                ""))
                .statusCode(422);
    }

    @Test
    void the_owner_prices_labour_and_adds_a_tax_with_its_source() {
        var shop = shops.open("CA-ON", "en");
        post(
                        shop.owner(),
                        shop.at("shop/prices"),
                        Map.of("item", "labour:hour", "price", "112.00", "cost", "", "from", "2026-01-01"))
                .statusCode(303);
        as(shop.owner()).get(shop.at("shop/prices")).then().body(containsString("$112.00"));
        var tax = new java.util.HashMap<>(Map.of(
                "region",
                "CA-AB",
                "code",
                "gst",
                "labelEn",
                "GST 5%",
                "labelFr",
                "TPS 5 %",
                "percent",
                "5",
                "category",
                "S",
                "from",
                "2026-01-01",
                "source",
                ""));
        post(shop.owner(), shop.at("shop/taxes"), tax).statusCode(422).body(containsString("GST 5%"));
        tax.put("source", "Canada Revenue Agency, GST rates, read 2026-01-02");
        post(shop.owner(), shop.at("shop/taxes"), tax)
                .statusCode(422)
                .body(containsString("What will be charged there"), containsString("(5%)"));
        tax.put("seen", "CA-AB gst 2026-01-01 any any any 5");
        post(shop.owner(), shop.at("shop/taxes"), tax).statusCode(303);
        as(shop.owner()).get(shop.at("shop/taxes")).then().body(containsString("Alberta"));
    }
}
