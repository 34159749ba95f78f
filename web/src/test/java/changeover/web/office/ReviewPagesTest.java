package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static io.restassured.RestAssured.given;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.notices.OutboxMessage;
import changeover.contracts.PostgresForTests;
import changeover.web.ALivedInHome;
import changeover.web.AShop.Shop;
import changeover.web.OnTheirPage;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** A closure that falls under a rule waits: no report is mailed and nothing is issued before somebody says yes. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class ReviewPagesTest extends AReviewedShop {

    private static String reportsOfCustomer(Shop shop, UUID customer, String visit) {
        String secret = OnTheirPage.secret(shop, customer);
        int paper = given().cookie("yours", secret)
                .get(shop.at("yours/reports/" + visit))
                .then()
                .extract()
                .statusCode();
        boolean listed = yours(shop, secret).contains("yours/reports/" + visit);
        return paper + " " + listed + " " + yours(shop, secret).contains("Light rust");
    }

    static String yours(Shop shop, String secret) {
        return OnTheirPage.read(secret, shop.at("yours")).extract().asString();
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
            assertEquals("404 false false", reportsOfCustomer(shop, lived.customer(), visit));
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
            post(shop.office(), page + "/approval", Map.of("version", "2", "words", ""))
                    .statusCode(422);
            as(shop.office()).get(shop.at("reviews")).then().body(containsString("Well read"));
            List<OutboxMessage> sent = reports(shop, visit);
            assertEquals(1, sent.size());
            assertEquals(2, sent.getFirst().aboutVersion());
            assertTrue(
                    sent.getFirst().subject().startsWith(french ? "Votre rapport de visite" : "Your visit report"),
                    sent.getFirst().subject());
            assertEquals("200 true true", reportsOfCustomer(shop, lived.customer(), visit));
            send(shop.owner(), shop.api("invoices/" + draft + "/issue"), Map.of())
                    .statusCode(200);
        }
    }

    private static String issuingIsRefused(Shop shop) {
        String draft =
                as(shop.owner()).get(shop.api("invoices")).then().extract().path("find { it.number == null }.id");
        send(shop.owner(), shop.api("invoices/" + draft + "/issue"), Map.of())
                .statusCode(422)
                .body("refusals[0].code", equalTo("invoice.waits-for-review"));
        as(shop.owner()).get(shop.at("money/documents?standing=waiting")).then().statusCode(200);
        as(shop.owner())
                .get(shop.api("billing-runs/preview"))
                .then()
                .body(
                        "documents.size()",
                        equalTo(0),
                        "refused.size()",
                        equalTo(1),
                        "refused[0].invoice",
                        equalTo(draft),
                        "refused[0].code",
                        equalTo("invoice.waits-for-review"));
        as(shop.owner())
                .get(shop.at("money/runs?day=" + TODAY))
                .then()
                .statusCode(200)
                .body(containsString("money/invoices/" + draft));
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
}
