package changeover.web.api;

import static changeover.web.AShop.as;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.hasItems;

import changeover.contracts.PostgresForTests;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What stands behind prices, numbers and fees, by the API: written by the owner, read by the office, refused at its member. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class PricingRulesApiTest {

    @Inject
    AShop shops;

    @Test
    void zones_are_written_from_a_day_on() {
        var shop = shops.open("CA-QC", "fr");
        var river = Map.of(
                "code", "river",
                "nameEn", "Across the river",
                "nameFr", "Outre-fleuve",
                "postals", List.of(Map.of("begins", "j4k 1"), Map.of("begins", "J4K1")),
                "from", "2026-01-01");
        Sending.twice(shop.owner(), shop.api("prices/zones"), river)
                .statusCode(201)
                .body("postals.begins", equalTo(List.of("J4K1")));
        as(shop.office())
                .get(shop.api("prices/zones"))
                .then()
                .statusCode(200)
                .body("code", equalTo(List.of("river")))
                .body("[0].name.fr", equalTo("Outre-fleuve"));
        send(
                        shop.owner(),
                        shop.api("prices/zones"),
                        Map.of(
                                "code",
                                "hill",
                                "nameEn",
                                "Hill",
                                "nameFr",
                                "Butte",
                                "postals",
                                List.of(Map.of("begins", "J4K1")),
                                "from",
                                "2026-01-01"))
                .statusCode(422)
                .body("refusals.field", hasItems("postals"));
        send(shop.office(), shop.api("prices/zones"), river).statusCode(404);
    }

    @Test
    void mark_ups_are_for_known_parts_and_kinds_or_by_cost() {
        var shop = shops.open("CA-QC", "en");
        Sending.twice(
                        shop.owner(),
                        shop.api("prices/mark-ups"),
                        Map.of("scope", "kind", "item", "filter", "percent", "110", "step", "0.05"))
                .statusCode(201)
                .body("percent", equalTo("110"))
                .body("step.amount", equalTo("0.05"));
        send(shop.owner(), shop.api("prices/mark-ups"), Map.of("scope", "part", "item", "no-such-part", "step", "0.05"))
                .statusCode(422)
                .body("refusals.field", hasItems("item"));
        var brackets =
                List.of(Map.of("costFrom", "0.00", "percent", "150"), Map.of("costFrom", "50.00", "percent", "60.5"));
        Sending.twice(shop.owner(), shop.api("prices/mark-ups/by-cost"), Map.of("step", "1.00", "brackets", brackets))
                .statusCode(201)
                .body("percent", equalTo(List.of("150", "60.5")));
        send(
                        shop.owner(),
                        shop.api("prices/mark-ups/by-cost"),
                        Map.of("step", "1.00", "brackets", brackets.subList(1, 2)))
                .statusCode(422)
                .body("refusals.field", hasItems("costFrom"));
        as(shop.office()).get(shop.api("prices/mark-ups")).then().body("scope", hasItems("kind", "cost"));
    }

    @Test
    void minutes_fees_and_numbers() {
        var shop = shops.open("CA-QC", "fr");
        Sending.twice(shop.owner(), shop.api("prices/labour-terms"), Map.of("step", 30, "minimum", 60))
                .statusCode(201);
        send(shop.owner(), shop.api("prices/labour-terms"), Map.of("step", 7, "minimum", 60))
                .statusCode(422)
                .body("refusals.field", hasItems("step"));
        as(shop.office()).get(shop.api("prices/labour-terms")).then().body("step", hasItems(30));
        var fee = Map.of("kind", "returned", "region", "CA-QC", "amount", "20.00", "source", "Agreement, clause 9");
        Sending.twice(shop.owner(), shop.api("fees"), fee).statusCode(201).body("amount.amount", equalTo("20.00"));
        as(shop.office()).get(shop.api("fees")).then().body("region", hasItems("CA-QC"));
        send(
                        shop.owner(),
                        shop.api("fees"),
                        Map.of("kind", "returned", "region", "CA-QC", "amount", "1", "source", "x"))
                .statusCode(422)
                .body("refusals.field", hasItems("source"));
        Sending.twice(
                        shop.owner(),
                        shop.api("numbers"),
                        Map.of("kind", "invoice", "pattern", "H-{fiscal:4}-{number:4}", "number", 12))
                .statusCode(200)
                .body("begun", equalTo(true));
        as(shop.office())
                .get(shop.api("numbers"))
                .then()
                .statusCode(200)
                .body("find { it.kind == 'invoice' }.pattern", equalTo("H-{fiscal:4}-{number:4}"));
        send(shop.owner(), shop.api("numbers"), Map.of("kind", "credit", "pattern", "no number"))
                .statusCode(422)
                .body("refusals.field", hasItems("pattern"));
        send(shop.office(), shop.api("numbers"), Map.of("kind", "credit", "pattern", "C-{number:4}"))
                .statusCode(404);
    }
}
