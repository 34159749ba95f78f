package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.notices.Outbox;
import changeover.contracts.PostgresForTests;
import changeover.contracts.tenants.CurrentTenant;
import changeover.web.ALivedInHome;
import changeover.web.AQuebecHome;
import changeover.web.AShop;
import changeover.web.AShop.Shop;
import changeover.web.OnTheirPage;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Asked for a yes to more, the customer answers on their own page; an answer written on the wrong estimate is taken back. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class EstimateQuestionPagesTest {

    private static final LocalDate TODAY = LocalDate.now(ZoneId.of("America/Toronto"));

    @Inject
    AShop shops;

    @Inject
    AQuebecHome homes;

    @Inject
    CurrentTenant current;

    @Inject
    Outbox outbox;

    private static String location(ValidatableResponse response) {
        return response.statusCode(303)
                .extract()
                .header("Location")
                .replaceFirst("^https?://[^/]*", "")
                .replaceFirst("\\?.*", "");
    }

    /** One hundred dollars before taxes, offered. */
    private static String offered(Shop shop, ALivedInHome.Lived lived) {
        Map<String, Object> fields = Map.of(
                "words", "Two new sensors",
                "other-0-words", "Sealing",
                "other-0-quantity", "1",
                "other-0-unit", "C62",
                "other-0-price", "100",
                "other-0-work", "repair",
                "trip", "",
                "validUntil", TODAY.plusDays(5).toString());
        String at = location(post(shop.office(), shop.at("homes/" + lived.home() + "/estimates"), fields));
        location(post(shop.office(), at + "/offer", Map.of()));
        return at;
    }

    private static void answer(Shop shop, String at, String how) {
        location(post(
                shop.office(),
                at + "/answer",
                Map.of(
                        "how",
                        how,
                        "byName",
                        "Anselm Birk",
                        "day",
                        TODAY.toString(),
                        "time",
                        "00:00",
                        "channel",
                        "call")));
    }

    @Test
    void the_customer_says_yes_or_no_to_more_on_their_own_page() {
        for (boolean french : List.of(false, true)) {
            var shop = shops.open("CA-QC", french ? "fr" : "en");
            ALivedInHome.Lived lived = homes.sold(shop, french ? "fr" : "en");
            String at = offered(shop, lived);
            Map<String, Object> more = Map.of("amount", "140", "words", "A third sensor");
            post(shop.office(), at + "/questions", more).statusCode(422);
            answer(shop, at, "accepted");
            as(shop.office()).get(at + "/questions").then().statusCode(200);
            post(shop.office(), at + "/questions", Map.of("amount", "90", "words", "A third sensor"))
                    .statusCode(422)
                    .body(containsString("value=\"90\""));
            location(post(shop.office(), at + "/questions", more));
            as(shop.office())
                    .get(at)
                    .then()
                    .body(containsString(french ? "attend sa réponse" : "waits for their answer"));
            String mail = current.run(
                    shop.tenant(),
                    shop.office(),
                    () -> outbox.to(lived.customer()).stream()
                            .map(message -> message.subject())
                            .findFirst()
                            .orElse(""));
            assertEquals(french, mail.startsWith("Pouvons-nous continuer?"), mail);

            String secret = OnTheirPage.secret(shop, lived.customer());
            String theirs = shop.at("yours/" + at.substring(at.indexOf("estimates/")));
            OnTheirPage.read(secret, shop.at("yours"))
                    .body(containsString(french ? "vous demande un oui" : "asks you for a yes to more"));
            String page = OnTheirPage.read(secret, theirs)
                    .statusCode(200)
                    .body(containsString("A third sensor"), containsString(french ? "140,00" : "140.00"))
                    .extract()
                    .asString();
            String question = page.replaceAll("(?s).*action=\"([^\"]*/questions/[0-9a-f-]{36})\".*", "$1");
            OnTheirPage.say(secret, question, Map.of("how", "accepted", "byName", ""))
                    .statusCode(422);
            String how = french ? "refused" : "accepted";
            OnTheirPage.say(secret, question, Map.of("how", how, "byName", "Anselm Birk"))
                    .statusCode(303);
            OnTheirPage.say(secret, question, Map.of("how", "accepted", "byName", "Anselm Birk"))
                    .statusCode(422);
            OnTheirPage.read(secret, theirs).body(not(containsString("/questions/")));
            if (!french) {
                OnTheirPage.read(secret, theirs).body(containsString("said yes to $140.00 before taxes in all"));
            }
            as(shop.office())
                    .get(at)
                    .then()
                    .body(containsString(french ? "Non, a dit Anselm Birk" : "by their own link"));
            as(shop.office())
                    .get(shop.api(at.substring(at.indexOf("estimates/"))))
                    .then()
                    .body("accepted.amount", equalTo(french ? "100.00" : "140.00"))
                    .body("question", equalTo(null));
        }
    }

    @Test
    void an_answer_on_the_wrong_estimate_is_taken_back_while_nothing_hangs_on_it() {
        var shop = shops.open("CA-QC", "en");
        ALivedInHome.Lived lived = homes.sold(shop, "en");
        String at = offered(shop, lived);
        String api = shop.api(at.substring(at.indexOf("estimates/")));
        post(shop.office(), at + "/answer/undoing", Map.of("why", "None")).statusCode(422);
        answer(shop, at, "refused");
        as(shop.office()).get(at + "/answer/undoing").then().statusCode(200).body(containsString("Anselm Birk"));
        post(shop.office(), at + "/answer/undoing", Map.of("why", " ")).statusCode(422);
        location(post(shop.office(), at + "/answer/undoing", Map.of("why", "It was about the other house")));
        as(shop.office())
                .get(at)
                .then()
                .body(containsString("Keep their answer"), containsString("It was about the other house"));
        answer(shop, at, "accepted");
        as(shop.office())
                .header("Operation-Id", UUID.randomUUID().toString())
                .contentType("application/json")
                .body(Map.of("by", "Odile", "why", "Once more"))
                .post(api + "/answer-undoing")
                .then()
                .statusCode(200)
                .body("state", equalTo("offered"))
                .body("undone.size()", equalTo(2));
        answer(shop, at, "accepted");
        location(post(shop.office(), at + "/questions", Map.of("amount", "140", "words", "A third sensor")));
        post(shop.office(), at + "/answer/undoing", Map.of("why", "Asked already"))
                .statusCode(422);
        location(post(shop.office(), at + "/questions", Map.of("amount", "150", "words", "A dearer one")));
        String waits = as(shop.office()).get(at).then().extract().asString();
        assertFalse(waits.contains("A third sensor"), "only the newest question waits");
        assertTrue(waits.contains("A dearer one"));
        location(post(
                shop.office(),
                at + "/visits",
                Map.of("visit", "", "minutes", "60", "last", TODAY.plusDays(3).toString())));
        post(shop.office(), at + "/answer/undoing", Map.of("why", "Too late"))
                .statusCode(422)
                .body(containsString("hangs on this answer"), containsString("Too late"));
        var other = shops.open("CA-QC", "en");
        String foreign = at.replace(shop.slug(), other.slug());
        post(other.office(), foreign + "/answer/undoing", Map.of("why", "x")).statusCode(404);
        post(other.office(), foreign + "/questions", Map.of("amount", "900", "words", "x"))
                .statusCode(404);
    }
}
