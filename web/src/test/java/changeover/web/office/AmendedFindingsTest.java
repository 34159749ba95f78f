package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.notices.OutboxMessage;
import changeover.contracts.PostgresForTests;
import changeover.web.ALivedInHome;
import changeover.web.AShop.Shop;
import changeover.web.OnTheirPage;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** What is found to have been found is written down when a visit is corrected: what is grave waits, what must not be used is told. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class AmendedFindingsTest extends AReviewedShop {

    private static final String WORN = "The bearing is worn through";

    private static Map<String, Object> correction(String why, String level, String text) {
        return new HashMap<>(Map.ofEntries(
                Map.entry("made", UUID.randomUUID().toString()),
                Map.entry("why", why),
                Map.entry("minutes", "45"),
                Map.entry("extra", "0"),
                Map.entry("received", "Anselm Birk"),
                Map.entry("note", ""),
                Map.entry("machine", ""),
                Map.entry("level", level),
                Map.entry("text", text),
                Map.entry("language", "en"),
                Map.entry("toldTo", "Anselm Birk"),
                Map.entry("answer", "yes")));
    }

    private void rule(Shop shop) {
        OrderPagesTest.location(post(
                shop.owner(),
                shop.at("shop/reviews"),
                Map.of(
                        "made",
                        UUID.randomUUID().toString(),
                        "kind",
                        "severity",
                        "person",
                        "",
                        "level",
                        "urgent",
                        "first",
                        "10",
                        "from",
                        TODAY.toString())));
    }

    @Test
    void a_grave_finding_that_is_added_waits_and_is_mailed_as_the_new_version() {
        for (boolean french : List.of(false, true)) {
            Shop shop = shops.open("CA-ON", french ? "fr" : "en");
            ALivedInHome.Lived lived = priced(shop, french ? "fr" : "en");
            rule(shop);
            String visit = OrderPagesTest.visit(shop, lived.home());
            close(shop, visit, List.of(Map.of("level", "recommended", "text", "Light rust", "language", "en")));
            assertEquals(1, reports(shop, visit).size());
            String form = shop.at("visits/" + visit + "/amendment");
            as(shop.office())
                    .get(form)
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "Autre chose a été constaté" : "Something was found"));
            post(shop.office(), form, correction("", "urgent", WORN))
                    .statusCode(422)
                    .body(containsString(WORN));
            OrderPagesTest.location(post(shop.office(), form, correction("Seen on the photo", "urgent", WORN)));
            assertEquals(1, reports(shop, visit).size());
            String secret = OnTheirPage.secret(shop, lived.customer());
            assertTrue(!ReviewPagesTest.yours(shop, secret).contains(WORN));
            String draft =
                    as(shop.owner()).get(shop.api("invoices")).then().extract().path("find { it.number == null }.id");
            send(shop.owner(), shop.api("invoices/" + draft + "/issue"), Map.of())
                    .statusCode(422)
                    .body("refusals[0].code", equalTo("invoice.waits-for-review"));
            String held = as(shop.office())
                    .get(shop.api("reviews"))
                    .then()
                    .body("size()", equalTo(1), "[0].why", equalTo("severity"))
                    .extract()
                    .path("[0].id");
            OrderPagesTest.location(
                    post(shop.office(), shop.at("reviews/" + held + "/approval"), Map.of("version", "2", "words", "")));
            List<OutboxMessage> sent = reports(shop, visit).stream()
                    .sorted(Comparator.comparing(OutboxMessage::aboutVersion))
                    .toList();
            assertEquals(2, sent.size());
            assertEquals(2, sent.getLast().aboutVersion());
            assertTrue(
                    sent.getLast().body().contains("Seen on the photo"),
                    sent.getLast().body());
            assertTrue(ReviewPagesTest.yours(shop, secret).contains(WORN));
            OrderPagesTest.location(post(shop.office(), form, lighter(shop, form)));
            as(shop.office()).get(shop.api("reviews")).then().body("size()", equalTo(0));
            assertEquals(3, reports(shop, visit).size());
        }
    }

    /** The grave one is taken back; nothing that is lighter waits. */
    private static Map<String, Object> lighter(Shop shop, String form) {
        String page = as(shop.office()).get(form).then().extract().asString();
        String back = page.replaceAll("(?s).*" + WORN + ".{0,120}?value=\"([0-9a-f-]{36})\".*", "$1");
        Map<String, Object> typed = correction("It was another machine", "recommended", "The bearing is noisy");
        typed.put("back", back);
        return typed;
    }

    @Test
    void what_must_not_be_used_is_stopped_when_it_is_added() {
        Shop shop = shops.open("CA-ON", "en");
        ALivedInHome.Lived lived = priced(shop, "en");
        String visit = OrderPagesTest.visit(shop, lived.home());
        close(shop, visit, List.of());
        as(shop.office()).get(shop.at("stopped")).then().body(not(containsString("Soot behind the panel")));
        OrderPagesTest.location(post(
                shop.office(),
                shop.at("visits/" + visit + "/amendment"),
                correction("Forgotten", "do_not_use", "Soot behind the panel")));
        as(shop.office()).get(shop.at("stopped")).then().body(containsString("Soot behind the panel"));
        assertTrue(ReviewPagesTest.yours(shop, OnTheirPage.secret(shop, lived.customer()))
                .contains("Soot behind the panel"));
    }
}
