package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static io.restassured.RestAssured.given;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.notices.Outbox;
import changeover.billing.notices.OutboxMessage;
import changeover.billing.pricing.ItemKind;
import changeover.billing.pricing.PriceBook;
import changeover.billing.pricing.PriceEntry;
import changeover.billing.pricing.Prices;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import changeover.contracts.words.Refused;
import changeover.scheduling.reviews.Reviews;
import changeover.web.ALivedInHome;
import changeover.web.AShop;
import changeover.web.AShop.Shop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** A closure that falls under a rule waits: no report is mailed and nothing is issued before somebody says yes. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class ReviewPagesTest {

    private static final LocalDate TODAY = LocalDate.now(ZoneId.of("America/Toronto"));
    private static final LocalDate OPENED = LocalDate.of(2026, 1, 5);

    @Inject
    AShop shops;

    @Inject
    ALivedInHome homes;

    @Inject
    Outbox outbox;

    @Inject
    Prices prices;

    @Inject
    Reviews reviews;

    private ALivedInHome.Lived priced(Shop shop, String language) {
        ALivedInHome.Lived lived = homes.machines(shop, language);
        shops.in(shop, () -> {
            prices.set(new PriceEntry(ItemKind.LABOUR, PriceBook.HOUR, Money.of("120.00", "CAD"), null, OPENED));
            prices.set(new PriceEntry(ItemKind.TRAVEL, PriceBook.VISIT, Money.of("35.00", "CAD"), null, OPENED));
            return true;
        });
        return lived;
    }

    private static void close(Shop shop, String visit, List<Map<String, Object>> findings) {
        send(
                        shop.technician(),
                        shop.api("visits/" + visit + "/closure"),
                        Map.of("minutes", 45, "receivedBy", "Anselm Birk", "findings", findings))
                .statusCode(200);
    }

    private List<OutboxMessage> reports(Shop shop, String visit) {
        return shops.in(shop, () -> outbox.about(UUID.fromString(visit)));
    }

    private static String reportsOfCustomer(Shop shop, UUID customer, String visit) {
        String page = post(shop.office(), shop.at("customers/" + customer + "/link"), Map.of())
                .extract()
                .asString();
        String secret = page.replaceAll("(?s).*/yours/([A-Za-z0-9_-]{43}).*", "$1");
        int paper = given().cookie("yours", secret)
                .get(shop.at("yours/reports/" + visit))
                .then()
                .extract()
                .statusCode();
        boolean listed = given().cookie("yours", secret)
                .get(shop.at("yours"))
                .then()
                .extract()
                .asString()
                .contains("yours/reports/" + visit);
        return paper + " " + listed;
    }

    @Test
    void a_technicians_closures_wait_for_a_yes_in_both_languages() {
        for (boolean french : List.of(false, true)) {
            Shop shop = shops.open("CA-ON", french ? "fr" : "en");
            ALivedInHome.Lived lived = priced(shop, french ? "fr" : "en");
            String rules = shop.at("shop/reviews");
            as(shop.office())
                    .get(rules)
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "Aucune clôture n’attend" : "No closure waits"));
            var rule = new HashMap<String, Object>(Map.of(
                    "made",
                    UUID.randomUUID().toString(),
                    "kind",
                    "technician",
                    "person",
                    "",
                    "level",
                    "urgent",
                    "first",
                    "10",
                    "from",
                    TODAY.toString()));
            post(shop.office(), rules, rule).statusCode(404);
            post(shop.owner(), rules, rule)
                    .statusCode(422)
                    .body(containsString(french ? "Choisissez de qui" : "Choose whose"));
            rule.put("person", shop.technician().toString());
            OrderPagesTest.location(post(shop.owner(), rules, rule));
            String visit = OrderPagesTest.visit(shop, lived.home());
            close(shop, visit, List.of(Map.of("level", "recommended", "text", "Light rust", "language", "en")));
            assertEquals(0, reports(shop, visit).size());
            assertEquals("404 false", reportsOfCustomer(shop, lived.customer(), visit));
            as(shop.owner())
                    .get(shop.at("today"))
                    .then()
                    .body(containsString(french ? "1 visite close attend" : "1 closed visit waits"));
            String held = as(shop.office())
                    .get(shop.api("reviews"))
                    .then()
                    .body("size()", equalTo(1), "[0].why", equalTo("technician"))
                    .extract()
                    .path("[0].id");
            String page = shop.at("reviews/" + held);
            as(shop.office()).get(page).then().statusCode(200).body(containsString("Light rust"));
            as(shop.office()).get(shop.at("visits/" + visit)).then().body(containsString("reviews/" + held));
            String draft = issuingIsRefused(shop);
            amended(shop, visit, page);
            post(shop.office(), page + "/approval", Map.of("version", "1", "words", "Well read"))
                    .statusCode(422)
                    .body(containsString("Well read"));
            OrderPagesTest.location(
                    post(shop.office(), page + "/approval", Map.of("version", "2", "words", "Well read")));
            post(shop.office(), page + "/approval", Map.of("version", "2", "words", "")).statusCode(422);
            as(shop.office()).get(shop.at("reviews")).then().body(containsString("Well read"));
            List<OutboxMessage> sent = reports(shop, visit);
            assertEquals(1, sent.size());
            assertEquals(2, sent.getFirst().aboutVersion());
            assertTrue(
                    sent.getFirst().subject().startsWith(french ? "Votre rapport de visite" : "Your visit report"),
                    sent.getFirst().subject());
            assertEquals("200 true", reportsOfCustomer(shop, lived.customer(), visit));
            send(shop.owner(), shop.api("invoices/" + draft + "/issue"), Map.of())
                    .statusCode(200);
        }
    }

    private static String issuingIsRefused(Shop shop) {
        String draft = as(shop.owner())
                .get(shop.api("invoices"))
                .then()
                .extract()
                .path("find { it.number == null }.id");
        send(shop.owner(), shop.api("invoices/" + draft + "/issue"), Map.of())
                .statusCode(422)
                .body(containsString("waits until somebody"));
        as(shop.owner())
                .get(shop.at("money/documents?standing=waiting"))
                .then()
                .statusCode(200);
        return draft;
    }

    private void amended(Shop shop, String visit, String review) {
        String form = shop.at("visits/" + visit + "/amendment");
        as(shop.office()).get(form).then().statusCode(200).body(containsString("Light rust"), containsString("45"));
        var typed = new HashMap<String, Object>(Map.of(
                "made",
                UUID.randomUUID().toString(),
                "why",
                "",
                "minutes",
                "40",
                "extra",
                "0",
                "received",
                "Anselm Birk",
                "note",
                ""));
        post(shop.office(), form, typed).statusCode(422).body(containsString("value=\"40\""));
        typed.put("why", "Five minutes were ours");
        OrderPagesTest.location(post(shop.office(), form, typed));
        as(shop.office()).get(review).then().body(containsString("40"));
        assertEquals(0, reports(shop, visit).size());
    }

    @Test
    void what_must_not_be_used_is_told_at_once_although_its_closure_waits() {
        Shop shop = shops.open("CA-ON", "en");
        UUID home = priced(shop, "en").home();
        send(
                        shop.owner(),
                        shop.api("review-rules"),
                        Map.of("kind", "severity", "level", "urgent", "from", TODAY.toString()))
                .statusCode(201);
        String visit = OrderPagesTest.visit(shop, home);
        close(
                shop,
                visit,
                List.of(Map.of(
                        "level", "do_not_use",
                        "sentence", "co-high",
                        "toldTo", "Anselm Birk",
                        "answer", "yes")));
        assertEquals(0, reports(shop, visit).size());
        String stop = as(shop.office())
                .get(shop.api("stopped"))
                .then()
                .body("size()", equalTo(1))
                .extract()
                .path("[0].id");
        assertEquals(1, shops.in(shop, () -> outbox.about(UUID.fromString(stop)).size()));
        String held = as(shop.office())
                .get(shop.api("reviews"))
                .then()
                .body("[0].why", equalTo("severity"), "[0].gravest", equalTo("do_not_use"))
                .extract()
                .path("[0].id");
        send(shop.technician(), shop.api("reviews/" + held + "/approval"), Map.of("version", 1))
                .statusCode(404);
        send(shop.office(), shop.api("reviews/" + held + "/approval"), Map.of("version", 1))
                .statusCode(200)
                .body("looked.by", equalTo("Basil Fenn"));
        assertEquals(1, reports(shop, visit).size());
    }

    @Test
    void a_rule_that_ended_holds_nothing_and_whoever_closed_it_does_not_say_yes() {
        Shop shop = shops.open("CA-ON", "en");
        UUID home = priced(shop, "en").home();
        String rule = send(
                        shop.owner(),
                        shop.api("review-rules"),
                        Map.of("kind", "first", "first", 2, "from", TODAY.toString()))
                .statusCode(201)
                .extract()
                .path("id");
        String first = OrderPagesTest.visit(shop, home);
        send(
                        shop.office(),
                        shop.api("visits/" + first + "/closure"),
                        Map.of("minutes", 30, "receivedBy", "Anselm Birk"))
                .statusCode(200);
        String held = as(shop.office()).get(shop.api("reviews")).then().extract().path("[0].id");
        var refused = assertThrows(
                Refused.class,
                () -> shops.in(shop, () -> {
                    reviews.approve(UUID.fromString(held), 1, null, shop.technician());
                    return true;
                }));
        assertEquals("review.by-another", refused.first().code());
        send(shop.owner(), shop.api("review-rules/" + rule + "/ending"), Map.of())
                .statusCode(200);
        send(shop.owner(), shop.api("review-rules/" + rule + "/ending"), Map.of())
                .statusCode(422);
        as(shop.office()).get(shop.api("reviews")).then().body("id", equalTo(List.of(held)));
        as(shop.owner()).get(shop.at("shop/reviews")).then().body(not(containsString("/ending\"")));
    }

    @Test
    void times_stand_beside_the_others_by_the_alphabet_and_no_technician_sees_them() {
        for (boolean french : List.of(false, true)) {
            Shop shop = shops.open("CA-ON", french ? "fr" : "en");
            as(shop.office())
                    .get(shop.at("reviews/spread"))
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "pas un jugement" : "no judgement"));
            as(shop.technician()).get(shop.at("reviews/spread")).then().statusCode(404);
            as(shop.technician())
                    .get(shop.api("reviews/spread?from=2026-01-01&last=2026-12-31"))
                    .then()
                    .statusCode(404);
            as(shop.office())
                    .get(shop.api("reviews/spread?from=2026-01-01&last=2026-12-31"))
                    .then()
                    .statusCode(200)
                    .body("times.size()", equalTo(0));
        }
    }
}
