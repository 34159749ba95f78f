package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.PostgresForTests;
import changeover.contracts.words.Wording;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
import changeover.web.AShop;
import changeover.web.Shown;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The price book at the desk: as of any day, its next version, the rules behind it, its file, and an example. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class PriceBookPagesTest {

    private static final String TOKEN = "AAAAAAAAAAAAAAAAAAAAAA";

    @Inject
    AShop shops;

    @Inject
    Parts parts;

    private AShop.Shop shop(String language) {
        var shop = shops.open(language.equals("fr") ? "CA-QC" : "CA-ON", language);
        shops.in(shop, () -> {
            parts.keep(new KnownPart("FIL-1", new Wording("Thin filter", "Filtre mince"), "C62", "filter", null));
            return parts.keep(new KnownPart("PAD-1", new Wording("Pad", "Tampon"), "C62", null, null));
        });
        price(shop, "labour:hour", "112.00", "57.00", "2026-01-01");
        price(shop, "travel:visit", "45.00", "", "2026-01-01");
        return shop;
    }

    private static void price(AShop.Shop shop, String item, String price, String cost, String from) {
        post(shop.owner(), shop.at("shop/prices"), Map.of("item", item, "price", price, "cost", cost, "from", from))
                .statusCode(303);
    }

    private LocalDate next() {
        return LocalDate.now(java.time.ZoneId.of("America/Toronto"))
                .plusYears(1)
                .withDayOfYear(1);
    }

    private static ValidatableResponse page(AShop.Shop shop, String path) {
        return as(shop.owner()).get(shop.at(path)).then().statusCode(200);
    }

    @Test
    void a_price_follows_its_cost_by_the_rules_and_the_page_says_where_it_comes_from() {
        for (String language : List.of("en", "fr")) {
            boolean french = language.equals("fr");
            var shop = shop(language);
            var cost = Map.of("item", "part:FIL-1", "price", "", "cost", "4.25", "from", "2026-02-01");
            post(shop.owner(), shop.at("shop/prices"), cost)
                    .statusCode(422)
                    .body(containsString(french ? "Aucune règle de majoration" : "No mark-up rule"));
            post(
                            shop.owner(),
                            shop.at("shop/prices/mark-ups/by-cost"),
                            Map.of(
                                    "cost1",
                                    "0",
                                    "percent1",
                                    "100",
                                    "cost2",
                                    "20",
                                    "percent2",
                                    "60",
                                    "step",
                                    "0.05",
                                    "from",
                                    "2026-01-01"))
                    .statusCode(303);
            post(
                            shop.owner(),
                            shop.at("shop/prices/mark-ups"),
                            Map.of("whom", "kind:filter", "percent", "110", "step", "0.05", "from", "2026-01-01"))
                    .statusCode(303);
            post(shop.owner(), shop.at("shop/prices"), cost).statusCode(303);
            String book = page(shop, "shop/prices")
                    .body(containsString(french ? "8,95" : "$8.95"))
                    .body(containsString(french ? "son coût + 110" : "its cost + 110%"))
                    .body(containsString(french ? "Tampon" : "Pad"))
                    .extract()
                    .asString();
            Shown.keep("prices-" + language, book);
            Shown.keep(
                    "markups-" + language,
                    page(shop, "shop/prices/mark-ups")
                            .body(containsString(french ? "pièces qui coûtent" : "parts that cost $20.00 or more"))
                            .extract()
                            .asString());
        }
    }

    @Test
    void a_version_is_prepared_ahead_looked_at_written_and_taken_back() {
        for (String language : List.of("en", "fr")) {
            boolean french = language.equals("fr");
            var shop = shop(language);
            String query = "?from=" + next() + "&part=3&labour=3&travel=0&step=0.05";
            String look = page(shop, "shop/prices/next" + query)
                    .body(containsString(french ? "115,35" : "$115.35"))
                    .body(not(containsString(french ? "46,35" : "$46.35")))
                    .extract()
                    .asString();
            Shown.keep("nextprices-" + language, look);
            page(shop, "shop/prices").body(not(containsString(french ? "115,35" : "$115.35")));
            String seen = look.replaceAll("(?s).*name=\"seen\" value=\"([0-9a-f]+)\".*", "$1");
            var fields = Map.of(
                    "from", next().toString(), "part", "3", "labour", "3", "travel", "0", "step", "0.05", "seen", seen);
            price(shop, "labour:hour", "113.00", "57.00", "2026-02-01");
            post(shop.owner(), shop.at("shop/prices/next"), fields)
                    .statusCode(422)
                    .body(containsString(french ? "Les prix ont changé" : "The prices have changed"))
                    .body(containsString(french ? "116,40" : "$116.40"));
            price(shop, "labour:hour", "112.00", "57.00", "2026-02-01");
            post(shop.owner(), shop.at("shop/prices/next"), fields).statusCode(303);
            page(shop, "shop/prices").body(containsString(french ? "115,35" : "$115.35,"));
            page(shop, "shop/prices?day=" + next()).body(containsString(french ? "115,35" : "$115.35"));
            post(shop.owner(), shop.at("shop/prices/withdrawal"), Map.of("day", "2026-02-01"))
                    .statusCode(422)
                    .body(containsString(french ? "Ces prix ont commencé" : "These prices have begun"));
            post(shop.owner(), shop.at("shop/prices/withdrawal"), Map.of("day", next().toString()))
                    .statusCode(303);
            page(shop, "shop/prices").body(not(containsString(french ? "115,35" : "$115.35")));
            as(shop.office()).get(shop.at("shop/prices/next")).then().statusCode(404);
        }
    }

    @Test
    void minutes_zones_and_an_example_stand_in_both_languages() {
        for (String language : List.of("en", "fr")) {
            boolean french = language.equals("fr");
            var shop = shop(language);
            post(
                            shop.owner(),
                            shop.at("shop/prices/labour"),
                            Map.of("step", "7", "minimum", "-1", "from", "2026-01-01"))
                    .statusCode(422);
            post(
                            shop.owner(),
                            shop.at("shop/prices/labour"),
                            Map.of("step", "30", "minimum", "60", "from", "2026-01-01"))
                    .statusCode(303);
            Shown.keep(
                    "labour-" + language,
                    page(shop, "shop/prices/labour").extract().asString());
            var zone = new java.util.HashMap<>(Map.of(
                    "code",
                    "river",
                    "nameEn",
                    "River",
                    "nameFr",
                    "Rivière",
                    "postals",
                    "x0x, x1 a",
                    "from",
                    "2026-01-01"));
            post(shop.owner(), shop.at("shop/prices/zones"), zone).statusCode(303);
            zone.put("code", "coast");
            post(shop.owner(), shop.at("shop/prices/zones"), zone)
                    .statusCode(422)
                    .body(containsString("X0X"));
            post(shop.owner(), shop.at("shop/prices/zones/shop"), Map.of("latitude", "46.5", "longitude", ""))
                    .statusCode(422);
            post(shop.owner(), shop.at("shop/prices/zones/shop"), Map.of("latitude", "46.5", "longitude", "-72,1"))
                    .statusCode(303);
            price(shop, "travel:river", "80.00", "", "2026-01-01");
            Shown.keep(
                    "zones-" + language,
                    page(shop, "shop/prices/zones")
                            .body(containsString("X0X, X1A"))
                            .body(containsString(french ? "80,00" : "$80.00"))
                            .extract()
                            .asString());
            page(shop, "shop/prices/example").body(containsString(french ? "157,00" : "$157.00"));
            Shown.keep(
                    "example-" + language,
                    page(
                                    shop,
                                    "shop/prices/example?kind=call&minutes=20&outside=0&quantity=2&part=FIL-1&postal=X0X1A1&day=2026-06-01&other=2025-06-01")
                            .body(containsString(french ? "192,00" : "$192.00"))
                            .body(containsString(french ? "aucun prix" : "no price"))
                            .body(containsString(french ? "Zone Rivière" : "Zone River"))
                            .extract()
                            .asString());
        }
    }

    @Test
    void a_file_is_looked_at_first_and_written_on_a_yes() {
        for (boolean french : List.of(false, true)) {
            String language = french ? "fr" : "en";
            var shop = shop(language);
            String csv = "item,from,price,cost\r\nFIL-1,2026-03-01,14.00,4.20\r\nNONE-1,,3.00,\r\n";
            String look = send(shop, Map.of("what", "look", "day", "2026-03-01"), csv)
                    .statusCode(200)
                    .body(containsString(french ? "Rien n’est encore écrit." : "Nothing is written yet."))
                    .body(containsString("NONE-1"))
                    .body(containsString(french ? "14,00" : "$14.00"))
                    .extract()
                    .asString();
            Shown.keep("pricefile-" + language, look);
            String carried = look.replaceAll("(?s).*name=\"carried\" value=\"([^\"]+)\".*", "$1");
            String seen = look.replaceAll("(?s).*name=\"seen\" value=\"([0-9a-f]+)\".*", "$1");
            var yes = Map.of("what", "good", "day", "2026-03-01", "carried", carried, "seen", seen);
            send(shop, yes, null)
                    .statusCode(200)
                    .body(containsString(french ? "Écrit\u00a0: 1 prix." : "Written: 1 price."));
            page(shop, "shop/prices").body(containsString(french ? "14,00" : "$14.00"));
            send(shop, yes, null)
                    .statusCode(200)
                    .body(containsString(french ? "Rien n’est encore écrit." : "Nothing is written yet."));
            String taken = page(shop, "shop/prices/file/prices.csv").extract().asString();
            assertEquals(
                    "part,FIL-1," + (french ? "Filtre mince" : "Thin filter") + ",C62,2026-03-01,14.00,4.20,CAD",
                    taken.lines().skip(2).findFirst().orElse(""));
            send(shop, Map.of("what", "look", "day", "2026-03-01"), taken)
                    .body(containsString(french ? "Rien ne change." : "Nothing changes."));
            send(shop, Map.of("what", "all", "day", "2026-03-01", "carried", "rubbish"), null)
                    .statusCode(422);
        }
    }

    private static ValidatableResponse send(AShop.Shop shop, Map<String, String> fields, String csv) {
        var request = as(shop.owner()).cookie("csrf-token", TOKEN).multiPart("csrf", TOKEN);
        fields.forEach(request::multiPart);
        if (csv != null) {
            request.multiPart("file", "prices.csv", csv.getBytes(StandardCharsets.UTF_8), "text/csv");
        }
        return request.post(shop.at("shop/prices/file")).then();
    }
}
