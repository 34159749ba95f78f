package changeover.web.api;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.hasItems;
import static org.hamcrest.CoreMatchers.not;

import changeover.contracts.PostgresForTests;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The taxes with their sources over the API and on the page: what the owner has read, and what the business adds. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class TaxesApiTest {

    private static final String ALBERTA = "CA-AB gst 2008-01-01 any any any";

    @Inject
    AShop shops;

    @Test
    void the_owner_confirms_a_rate_that_we_know_from_memory() {
        var shop = shops.open("CA-QC", "fr");
        as(shop.office())
                .get(shop.api("taxes"))
                .then()
                .statusCode(200)
                .body("find { it.row == '" + ALBERTA + "' }.read", equalTo(false))
                .body("findAll { it.region == 'CA-QC' }.read", hasItems(true));
        Sending.twice(
                        shop.owner(),
                        shop.api("taxes/confirmations"),
                        Map.of("row", ALBERTA, "source", "The agency's own page", "readOn", "2026-01-05"))
                .statusCode(201)
                .body("read", equalTo(true))
                .body("source", equalTo("The agency's own page (2026-01-05)"));
        send(
                        shop.owner(),
                        shop.api("taxes/confirmations"),
                        Map.of("row", ALBERTA, "source", "again", "readOn", "2026-01-05"))
                .statusCode(422)
                .body("refusals.field", hasItems("row"));
        send(shop.office(), shop.api("taxes/confirmations"), Map.of("row", ALBERTA))
                .statusCode(404);
    }

    @Test
    void a_business_adds_a_row_for_one_use_and_work() {
        var shop = shops.open("CA-ON", "en");
        send(
                        shop.owner(),
                        shop.api("taxes"),
                        Map.of(
                                "region", "US-OH",
                                "property", "commercial",
                                "work", "repair",
                                "tax", "oh_sales",
                                "labelEn", "OH sales tax 5.75%",
                                "labelFr", "Taxe de vente OH 5,75 %",
                                "category", "S",
                                "percent", "5.75",
                                "from", "2026-01-01",
                                "source", "Read by the owner"))
                .statusCode(201)
                .body("property", equalTo("commercial"))
                .body("form", equalTo(null))
                .body("own", equalTo(true));
    }

    @Test
    void a_row_is_tried_added_and_ended() {
        var shop = shops.open("CA-QC", "fr");
        var qst = Map.of(
                "region", "CA-QC",
                "tax", "qst",
                "labelEn", "QST 10%",
                "labelFr", "TVQ 10 %",
                "category", "S",
                "percent", "10",
                "from", "2027-01-01",
                "source", "As if the rate had changed");
        send(shop.owner(), shop.api("taxes/trials"), qst)
                .statusCode(200)
                .body("charged.tax", equalTo(List.of("gst", "qst")))
                .body("charged.percent", equalTo(List.of("5", "10")))
                .body("charged.own", equalTo(List.of(false, true)));
        String row = send(shop.owner(), shop.api("taxes"), qst)
                .statusCode(201)
                .extract()
                .path("row");
        Sending.twice(shop.owner(), shop.api("taxes/last-days"), Map.of("ended", row, "lastDay", "2127-12-31"))
                .statusCode(200)
                .body("until", equalTo("2127-12-31"));
        send(shop.owner(), shop.api("taxes/last-days"), Map.of("ended", "CA-QC qst", "lastDay", "2027-12-31"))
                .statusCode(422)
                .body("refusals.field", hasItems("ended"));
        send(shop.office(), shop.api("taxes/last-days"), Map.of("ended", row, "lastDay", "2027-12-31"))
                .statusCode(404);
    }

    @Test
    void the_page_shows_what_will_be_charged_and_ends_a_row() {
        var shop = shops.open("CA-QC", "en");
        var qst = new HashMap<>(Map.of(
                "region", "CA-QC",
                "code", "qst",
                "labelEn", "QST 10%",
                "labelFr", "TVQ 10 %",
                "category", "S",
                "percent", "10",
                "from", "2027-01-01",
                "source", "As if the rate had changed"));
        qst.put("do", "look");
        post(shop.owner(), shop.at("shop/taxes"), qst)
                .statusCode(200)
                .body(containsString("TPS/GST 5%"), containsString("QST 10%"), containsString("(10%)"));
        qst.put("do", "add");
        post(shop.owner(), shop.at("shop/taxes"), qst).statusCode(422).body(containsString("(10%)"));
        String row = "CA-QC qst 2027-01-01 any any any";
        qst.put("seen", "CA-QC gst 2013-01-01 any any any 5; " + row + " 10");
        post(shop.owner(), shop.at("shop/taxes"), qst).statusCode(303);
        as(shop.owner()).get(shop.at("shop/taxes")).then().body(containsString("value=\"" + row + "\""));
        post(shop.owner(), shop.at("shop/taxes/last-days"), Map.of("ended", row, "lastDay", "2026-12-31"))
                .statusCode(422);
        post(shop.owner(), shop.at("shop/taxes/last-days"), Map.of("ended", row, "lastDay", "2127-12-31"))
                .statusCode(303);
        qst.put("region", "CA-ON");
        qst.put("do", "look");
        post(shop.owner(), shop.at("shop/taxes"), qst).statusCode(422).body(containsString("harmonized"));
    }

    @Test
    void the_page_takes_the_owners_yes_and_gives_a_refused_form_back() {
        var shop = shops.open("CA-QC", "fr");
        String page = shop.at("shop/taxes");
        as(shop.owner()).get(page).then().body(containsString("de mémoire"), containsString("value=\"" + ALBERTA));
        as(shop.office()).get(page).then().body(not(containsString("shop/taxes/confirmations")));
        post(
                        shop.owner(),
                        shop.at("shop/taxes/confirmations"),
                        Map.of("row", ALBERTA, "readIn", "", "readOn", "2026-01-05", "number", "R-12"))
                .statusCode(422)
                .body(containsString("R-12"), containsString("value=\"" + ALBERTA + "\" selected"));
        post(
                        shop.owner(),
                        shop.at("shop/taxes/confirmations"),
                        Map.of("row", ALBERTA, "readIn", "Agence", "readOn", "2026-01-05", "number", ""))
                .statusCode(303);
        as(shop.owner())
                .get(page)
                .then()
                .body(containsString("confirmé par vous"), not(containsString("value=\"" + ALBERTA)));
        as(shop.owner()).get(shop.at("changes/taxes")).then().body(containsString("Agence"));
    }
}
