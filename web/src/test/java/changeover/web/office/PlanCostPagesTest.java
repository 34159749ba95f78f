package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.not;

import changeover.contracts.PostgresForTests;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** What a plan costs in a home stands on the owner's pages, to the cent, and nowhere else. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class PlanCostPagesTest {

    private static final String FILE = """
            home,customer,street,city,region,country,latitude,longitude,unit,kind,fits
            h,Anselm Birk,9 Tannery Row,Port Ambrose,QC,CA,46.1,-77.0,Filter,filter-slot,size=16x25x4; thickness=4
            """;

    @Inject
    AShop shops;

    @Test
    void what_is_not_written_down_is_named_and_leaves_no_price() {
        for (String language : List.of("en", "fr")) {
            boolean french = language.equals("fr");
            var shop = shops.open("CA-QC", language);
            String plan = plan(shop);
            as(shop.owner())
                    .get(shop.at("money/plans/" + plan + "?home=" + home(shop)))
                    .then()
                    .statusCode(200)
                    .body(containsString(
                            french ? "Ce que coûte une heure de technicien." : "What an hour of a technician costs."))
                    .body(containsString(french ? "Frais généraux" : "Overhead"))
                    .body(containsString(french ? "Filtre à air 16x25x4" : "Air filter 16x25x4"))
                    .body(containsString(french ? "Pas encore de prix" : "No price yet"))
                    .body(containsString(french ? "Au moins" : "At least"));
        }
    }

    /**
     * Two visits of 7 minutes at 57.00 an hour: 13.30. Set-up twice 15: 28.50. Twice 39 minutes of road: 74.10. Two filters at
     * 15.75: 31.50. A fifth of 147.40: 29.48. Together 176.88; of 249.00 are left 72.12, which is 29.0 %. At half of the price:
     * 353.76.
     */
    @Test
    void the_cost_of_a_year_stands_there_to_the_cent_in_both_languages() {
        for (String language : List.of("en", "fr")) {
            boolean french = language.equals("fr");
            var shop = shops.open("CA-QC", language);
            String home = home(shop);
            String plan = plan(shop);
            figures(shop);
            as(shop.owner())
                    .get(shop.at("money/plans/" + plan + "?home=" + home + "&margin=50"))
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "13,30\u00a0$" : "$13.30"))
                    .body(containsString(french ? "74,10\u00a0$" : "$74.10"))
                    .body(containsString(french ? "31,50\u00a0$" : "$31.50"))
                    .body(containsString(french ? "29,48\u00a0$" : "$29.48"))
                    .body(containsString(french ? "176,88\u00a0$" : "$176.88"))
                    .body(containsString(french ? "72,12\u00a0$" : "$72.12"))
                    .body(containsString(french ? "marge 29\u00a0%" : "margin 29%"))
                    .body(containsString(french ? "353,76\u00a0$" : "$353.76"))
                    .body(containsString("<svg"))
                    .body(not(containsString("style=")))
                    .body(containsString(
                            french ? "sans passé, il n’y a pas d’écart" : "without a past there is no spread"));
            as(shop.owner())
                    .get(shop.at("money/plans/" + plan + "?home=" + home + "&margin=100"))
                    .then()
                    .statusCode(422)
                    .body(containsString("margin-wrong"));
            String api = shop.api("plans/" + plan + "/cost");
            as(shop.owner())
                    .get(api + "?home=" + home + "&margin=50")
                    .then()
                    .statusCode(200)
                    .body("cost.amount", equalTo("176.88"))
                    .body("left.amount", equalTo("72.12"))
                    .body("margin", equalTo("29.0"))
                    .body("priceForMargin.amount", equalTo("353.76"))
                    .body("causes.find { it.cause == 'travel' }.minutes", equalTo(78))
                    .body("missing.size()", equalTo(0));
            as(shop.owner()).get(api).then().statusCode(422).body("refusals[0].field", equalTo("home"));
            as(shop.owner()).get(api + "?home=" + home + "&margin=100").then().statusCode(422);
            as(shop.owner()).get(api + "?home=" + UUID.randomUUID()).then().statusCode(404);
            as(shop.office()).get(api + "?home=" + home).then().statusCode(404);
            String offer = shop.at("homes/" + home + "/offer?plan=" + plan + "&from=2027-04-01");
            as(shop.owner())
                    .get(offer)
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "Pour vous seulement" : "For your eyes"))
                    .body(containsString(french ? "176,88\u00a0$" : "$176.88"));
            as(shop.office())
                    .get(offer)
                    .then()
                    .statusCode(200)
                    .body(not(containsString(french ? "Pour vous seulement" : "For your eyes")));
            as(shop.office()).get(shop.at("money/plans/" + plan)).then().statusCode(404);
            as(shop.office()).get(shop.at("shop/costs")).then().statusCode(404);
        }
    }

    @Test
    void figures_begin_on_a_day_and_come_back_as_typed_when_they_cannot_be_so() {
        var shop = shops.open("CA-QC", "fr");
        as(shop.owner())
                .get(shop.at("shop/costs"))
                .then()
                .statusCode(200)
                .body(containsString("Rien n’est encore écrit"));
        post(
                        shop.owner(),
                        shop.at("shop/costs"),
                        Map.of(
                                "from",
                                "2026-01-01",
                                "setUpMinutes",
                                "900",
                                "way",
                                "percent",
                                "overhead",
                                "12",
                                "latitude",
                                "46"))
                .statusCode(422)
                .body(containsString("setUpMinutes-wrong"))
                .body(containsString("value=\"900\""));
        post(
                        shop.owner(),
                        shop.at("shop/costs"),
                        Map.of(
                                "from",
                                "2026-01-01",
                                "setUpMinutes",
                                "9",
                                "way",
                                "percent",
                                "overhead",
                                "12",
                                "latitude",
                                "46"))
                .statusCode(422)
                .body(containsString("Un lieu demande les deux"));
        figures(shop);
        post(
                        shop.owner(),
                        shop.at("shop/costs"),
                        Map.of("from", "2026-06-01", "setUpMinutes", "20", "way", "hour", "overhead", "18,50"))
                .statusCode(303);
        as(shop.owner())
                .get(shop.at("shop/costs"))
                .then()
                .body(containsString("18,50\u00a0$ l’heure"))
                .body(containsString("20\u00a0% de tous les autres coûts"))
                .body(containsString("57,00\u00a0$"));
        as(shop.owner()).get(shop.at("changes/costs")).then().statusCode(200);
    }

    private static void figures(AShop.Shop shop) {
        price(shop, Map.of("kind", "labour", "price", "112.00", "cost", "57.00", "from", "2026-01-01"));
        send(
                        shop.owner(),
                        shop.api("parts"),
                        Map.of(
                                "code",
                                "FIL-16254",
                                "nameEn",
                                "Filter",
                                "nameFr",
                                "Filtre",
                                "unit",
                                "H87",
                                "kind",
                                "filter",
                                "size",
                                "16x25x4"))
                .statusCode(201);
        price(
                shop,
                Map.of("kind", "part", "item", "FIL-16254", "price", "38.00", "cost", "15.75", "from", "2026-01-01"));
        post(
                        shop.owner(),
                        shop.at("shop/costs"),
                        Map.of(
                                "from", "2026-01-01",
                                "setUpMinutes", "15",
                                "way", "percent",
                                "overhead", "20",
                                "latitude", "46",
                                "longitude", "-77"))
                .statusCode(303);
    }

    private static void price(AShop.Shop shop, Map<String, String> price) {
        send(shop.owner(), shop.api("prices"), price).statusCode(201);
    }

    private static String plan(AShop.Shop shop) {
        return send(
                        shop.owner(),
                        shop.api("plans"),
                        Map.of(
                                "code", "two",
                                "nameEn", "Two turns",
                                "nameFr", "Deux saisons",
                                "visits", 2,
                                "price", "249.00",
                                "onSaleFrom", "2026-01-06",
                                "tasks",
                                        List.of(
                                                Map.of("task", "filter-at-visit"),
                                                Map.of("task", "filter-direction"),
                                                Map.of("task", "filter-deep")),
                                "parts", List.of(Map.of("part", "filter", "quantity", "2"))))
                .statusCode(201)
                .extract()
                .path("id");
    }

    private static String home(AShop.Shop shop) {
        as(shop.owner())
                .header("Operation-Id", UUID.randomUUID())
                .contentType("text/csv")
                .body(FILE)
                .post(shop.api("imports/homes"))
                .then()
                .statusCode(200);
        return as(shop.owner()).get(shop.api("homes")).then().extract().path("[0].id");
    }
}
