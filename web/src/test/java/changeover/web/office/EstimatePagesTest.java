package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
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
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** An estimate from its draft to its visit, in both languages; the customer's own yes; the owner's rule for the spot. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class EstimatePagesTest {

    private static final LocalDate TODAY = LocalDate.now(ZoneId.of("America/Toronto"));

    @Inject
    AShop shops;

    @Inject
    AQuebecHome homes;

    private static Map<String, Object> typed(String words) {
        var fields = new HashMap<String, Object>();
        fields.put("words", words);
        fields.put("other-0-words", "Sealing");
        fields.put("other-0-quantity", "2");
        fields.put("other-0-unit", "C62");
        fields.put("other-0-price", "50,25");
        fields.put("other-0-work", "repair");
        fields.put("trip", "");
        fields.put("validUntil", TODAY.plusDays(5).toString());
        fields.put("deposit", "40");
        return fields;
    }

    private static String location(ValidatableResponse response) {
        return response.statusCode(303)
                .extract()
                .header("Location")
                .replaceFirst("^https?://[^/]*", "")
                .replaceFirst("\\?.*", "");
    }

    private static Map<String, Object> answer(String how, String channel) {
        return Map.of(
                "how", how, "byName", "Anselm Birk", "day", TODAY.toString(), "time", "00:00", "channel", channel);
    }

    private static String offered(Shop shop, UUID home) {
        String at = location(post(shop.office(), shop.at("homes/" + home + "/estimates"), typed("Two new sensors")));
        location(post(shop.office(), at + "/offer", Map.of()));
        return at;
    }

    @Test
    void it_goes_from_its_draft_to_a_visit_and_a_deposit() {
        for (boolean french : List.of(false, true)) {
            var shop = shops.open("CA-QC", french ? "fr" : "en");
            UUID home = homes.sold(shop, french ? "fr" : "en").home();
            as(shop.office())
                    .get(shop.at("homes/" + home + "/estimates/new"))
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "Écrire une estimation" : "Write an estimate"));
            var wrong = typed("Two new sensors");
            wrong.put("other-0-price", "much");
            wrong.put("validUntil", TODAY.minusDays(1).toString());
            post(shop.office(), shop.at("homes/" + home + "/estimates"), wrong)
                    .statusCode(422)
                    .body(containsString("Two new sensors"), containsString("value=\"much\""));
            wrong.putAll(Map.of("other-0-quantity", "9999", "other-0-price", "9999999", "validUntil", "2199-01-01"));
            post(shop.office(), shop.at("homes/" + home + "/estimates"), wrong).body(containsString("0-price-wrong"));
            String at =
                    location(post(shop.office(), shop.at("homes/" + home + "/estimates"), typed("Two new sensors")));
            as(shop.office())
                    .get(at)
                    .then()
                    .statusCode(200)
                    .body(
                            containsString(french ? "100,50" : "100.50"),
                            containsString(french ? "115,55" : "115.55"),
                            containsString(french ? "Changer l’ébauche" : "Change the draft"));
            var changed = typed("Two sensors and a seal");
            changed.put("version", "0");
            as(shop.office())
                    .get(at + "/draft")
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "value=\"50,25\"" : "value=\"50.25\""));
            location(post(shop.office(), at + "/draft", changed));
            post(shop.office(), at + "/draft", changed).statusCode(422);
            location(post(shop.office(), at + "/offer", Map.of()));
            as(shop.office())
                    .get(shop.at("estimates"))
                    .then()
                    .body(
                            containsString(french ? "E-" : "EST-"),
                            containsString(french ? "expire bientôt" : "expires soon"));
            as(shop.office())
                    .get(shop.at("today"))
                    .then()
                    .body(containsString(french ? "Une expire bientôt." : "One expires soon."));
            as(shop.office()).get(shop.at("homes/" + home)).then().body(containsString("Two sensors and a seal"));
            as(shop.office()).get(at + "/pdf").then().statusCode(200).contentType("application/pdf");
            post(shop.office(), at + "/answer", answer("accepted", "site"))
                    .statusCode(422)
                    .body(containsString("Office de la protection du consommateur"), containsString("Anselm Birk"));
            post(shop.office(), at + "/answer", answer("accepted", "link")).statusCode(422);
            post(shop.office(), at + "/deposits", Map.of("amount", "40", "day", TODAY.toString(), "way", "card"))
                    .statusCode(422);
            location(post(shop.office(), at + "/answer", answer("accepted", "call")));
            String visit = location(post(
                    shop.office(),
                    at + "/visits",
                    Map.of(
                            "visit",
                            "",
                            "minutes",
                            "60",
                            "last",
                            TODAY.plusDays(3).toString())));
            as(shop.office()).get(visit).then().body(containsString("Two sensors and a seal"), containsString(at));
            location(post(
                    shop.office(), at + "/deposits", Map.of("amount", "40", "day", TODAY.toString(), "way", "card")));
            as(shop.office())
                    .get(at)
                    .then()
                    .body(
                            containsString(visit),
                            containsString(french ? "encore gardé" : "still kept"),
                            containsString(french ? "acceptée" : "accepted"));
            as(shop.office()).get(at + "/consents").then().statusCode(200);
            post(
                            shop.office(),
                            at + "/consents",
                            Map.of(
                                    "amount",
                                    "90",
                                    "words",
                                    "A third",
                                    "byName",
                                    "Anselm Birk",
                                    "day",
                                    TODAY.toString(),
                                    "time",
                                    "00:00",
                                    "channel",
                                    "call"))
                    .statusCode(422)
                    .body(containsString("value=\"90\""));
        }
    }

    @Test
    void the_customer_says_yes_on_their_own_page() {
        var shop = shops.open("CA-QC", "en");
        ALivedInHome.Lived lived = homes.sold(shop, "en");
        String at = offered(shop, lived.home());
        String id = at.substring(at.lastIndexOf('/') + 1);
        String secret = OnTheirPage.secret(shop, lived.customer());
        OnTheirPage.read(secret, shop.at("yours")).statusCode(200).body(containsString("yours/estimates/" + id));
        String theirs = shop.at("yours/estimates/" + id);
        String form = OnTheirPage.read(secret, theirs)
                .statusCode(200)
                .body(containsString("115.55"), containsString("Yes, do it"))
                .extract()
                .asString();
        assertTrue(form.contains("name=\"byName\""));
        OnTheirPage.read("A".repeat(43), theirs).statusCode(not(org.hamcrest.CoreMatchers.is(200)));
        as(shop.office()).get(at).then().body(containsString("Keep their answer"));
        OnTheirPage.say(secret, theirs + "/answer", Map.of("how", "accepted", "byName", ""))
                .statusCode(422);
        OnTheirPage.say(secret, theirs + "/answer", Map.of("how", "accepted", "byName", "Anselm Birk"))
                .statusCode(303);
        OnTheirPage.say(secret, theirs + "/answer", Map.of("how", "refused", "byName", "Anselm Birk"))
                .statusCode(422);
        as(shop.office()).get(at).then().body(containsString("by their own link"), containsString("Anselm Birk"));
        OnTheirPage.read(secret, theirs + "/pdf").statusCode(200);
    }

    @Test
    void the_owner_opens_the_spot_with_a_source() {
        var shop = shops.open("CA-QC", "en");
        Map<String, Object> rule = Map.of(
                "region", "CA-QC", "from", TODAY.toString(), "allowed", "yes", "source", "A letter of our lawyer");
        post(shop.office(), shop.at("shop/consents"), rule).statusCode(404);
        location(post(shop.owner(), shop.at("shop/consents"), rule));
        as(shop.office())
                .get(shop.at("shop/consents"))
                .then()
                .statusCode(200)
                .body(
                        containsString("A letter of our lawyer"),
                        containsString("Office de la protection du consommateur"),
                        containsString("may be signed on the spot"));
        post(shop.owner(), shop.at("shop/consents"), rule).statusCode(422);
        UUID home = homes.sold(shop, "en").home();
        String at = offered(shop, home);
        post(shop.office(), at + "/answer", answer("accepted", "site"))
                .statusCode(422)
                .body(containsString("In Quebec"));
        location(post(shop.office(), at + "/withdrawal", Map.of("why", "Twice")));
        as(shop.office()).get(at).then().body(containsString("withdrawn"));
    }
}
