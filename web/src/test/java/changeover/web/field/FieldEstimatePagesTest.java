package changeover.web.field;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;

import changeover.contracts.PostgresForTests;
import changeover.web.ALivedInHome;
import changeover.web.AQuebecHome;
import changeover.web.AShop;
import changeover.web.AShop.Shop;
import changeover.web.office.ABilledShop;
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

/** A repair is estimated where the machine stands, and agreed to there where that is allowed. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class FieldEstimatePagesTest {

    private static final LocalDate TODAY = LocalDate.now(ZoneId.of("America/Toronto"));

    @Inject
    AShop shops;

    @Inject
    ALivedInHome homes;

    @Inject
    AQuebecHome quebec;

    private static Map<String, Object> typed(String words) {
        var fields = new HashMap<String, Object>();
        fields.put("words", words);
        fields.put("other-0-words", "Two sensors");
        fields.put("other-0-quantity", "2");
        fields.put("other-0-unit", "C62");
        fields.put("other-0-price", "50");
        fields.put("other-0-work", "repair");
        fields.put("validUntil", TODAY.plusDays(30).toString());
        return fields;
    }

    private static Map<String, Object> said(String how) {
        return Map.of("how", how, "byName", "Anselm Birk", "here", "yes");
    }

    private String offered(Shop shop, String visit, boolean french) {
        String estimates = visit + "/estimates";
        as(shop.technician())
                .get(estimates + "/new")
                .then()
                .statusCode(200)
                .body(containsString(french ? "Écrire une estimation" : "Write an estimate"));
        Map<String, Object> wrong = typed("New sensors");
        wrong.put("other-0-price", "much");
        post(shop.technician(), estimates, wrong)
                .statusCode(422)
                .body(containsString("New sensors"), containsString("value=\"much\""));
        String at = FindingPagesTest.location(post(shop.technician(), estimates, typed("New sensors")));
        as(shop.technician())
                .get(at)
                .then()
                .statusCode(200)
                .body(containsString(french ? "100,00" : "100.00"), containsString(at + "/offer"));
        post(shop.technician(), at + "/answer", said("accepted")).statusCode(422);
        Map<String, Object> changed = typed("New sensors and a seal");
        changed.put("version", "0");
        as(shop.technician()).get(at + "/draft").then().statusCode(200).body(containsString("New sensors"));
        FindingPagesTest.location(post(shop.technician(), at + "/draft", changed));
        post(shop.technician(), at + "/draft", changed).statusCode(422);
        FindingPagesTest.location(post(shop.technician(), at + "/offer", Map.of()));
        post(shop.technician(), at + "/offer", Map.of()).statusCode(422);
        return at;
    }

    @Test
    void a_yes_is_taken_on_the_spot_and_its_work_is_this_visits() {
        for (boolean french : List.of(false, true)) {
            Shop shop = shops.open("CA-ON", french ? "fr" : "en");
            ABilledShop.confirmed(shop);
            UUID home = homes.machines(shop, french ? "fr" : "en").home();
            String visit = FindingPagesTest.visit(shop, home);
            String at = offered(shop, visit, french);
            as(shop.technician())
                    .get(at)
                    .then()
                    .body(
                            containsString(french ? "113,00" : "113.00"),
                            containsString(french ? "Oui, faites-le" : "Yes, do it"));
            post(shop.technician(), at + "/answer", Map.of("how", "accepted", "byName", "\u200b"))
                    .statusCode(422)
                    .body(not(containsString("name=\"here\" value=\"yes\" checked")));
            FindingPagesTest.location(post(shop.technician(), at + "/answer", said("accepted")));
            post(shop.technician(), at + "/answer", said("refused")).statusCode(422);
            as(shop.technician())
                    .get(at)
                    .then()
                    .body(containsString(french ? "Il se fait à cette visite" : "It is done in this visit"));
            as(shop.technician()).get(visit).then().body(containsString("New sensors and a seal"), containsString(at));
            as(shop.office())
                    .get(at.replaceFirst("/field/visits/[^/]*", ""))
                    .then()
                    .statusCode(200)
                    .body(containsString("Anselm Birk"), containsString(french ? "signé sur place" : "signed on"));
        }
    }

    @Test
    void where_the_law_keeps_it_from_being_signed_there_only_a_no_is_written_down() {
        Shop shop = shops.open("CA-QC", "en");
        UUID home = quebec.sold(shop, "en").home();
        String visit = FindingPagesTest.visit(shop, home);
        String at = offered(shop, visit, false);
        as(shop.technician())
                .get(at)
                .then()
                .body(
                        containsString("Office de la protection du consommateur"),
                        containsString("in a call with the office"),
                        not(containsString("Yes, do it")));
        post(shop.technician(), at + "/answer", said("accepted")).statusCode(422);
        FindingPagesTest.location(post(
                shop.owner(),
                shop.at("shop/consents"),
                Map.of(
                        "region",
                        "CA-QC",
                        "from",
                        TODAY.toString(),
                        "allowed",
                        "yes",
                        "source",
                        "A letter of our lawyer")));
        as(shop.technician()).get(at).then().body(containsString("Yes, do it"));
        FindingPagesTest.location(post(shop.technician(), at + "/answer", said("accepted")));
        String another = offered(shop, visit, false);
        FindingPagesTest.location(post(shop.technician(), another + "/answer", said("refused")));
        as(shop.technician()).get(another).then().body(containsString("refused"));
    }

    @Test
    void a_yes_without_a_visit_waits_for_the_office() {
        Shop shop = shops.open("CA-ON", "en");
        ABilledShop.confirmed(shop);
        String visit = FindingPagesTest.visit(shop, homes.machines(shop, "en").home());
        String at = offered(shop, visit, false);
        FindingPagesTest.location(
                post(shop.technician(), at + "/answer", Map.of("how", "accepted", "byName", "Anselm Birk")));
        as(shop.technician()).get(at).then().body(containsString("The office gives it a visit"));
        as(shop.office()).get(shop.at("today")).then().body(containsString("One that was accepted has no visit."));
        as(shop.office()).get(shop.at("estimates")).then().body(containsString("Accepted, without a visit"));
        FindingPagesTest.location(post(
                shop.office(),
                at.replaceFirst("/field/visits/[^/]*", "") + "/visits",
                Map.of("visit", "", "minutes", "60", "last", TODAY.plusDays(3).toString())));
        as(shop.office())
                .get(shop.at("estimates"))
                .then()
                .body(not(containsString("Accepted, without a visit")), containsString("New sensors and a seal"));
    }

    @Test
    void an_estimate_is_found_at_its_own_visit_only() {
        Shop shop = shops.open("CA-ON", "en");
        ABilledShop.confirmed(shop);
        UUID home = homes.machines(shop, "en").home();
        String visit = FindingPagesTest.visit(shop, home);
        String at = offered(shop, visit, false);
        String other = FindingPagesTest.made(shop, home).replace("/visits/", "/field/visits/");
        String id = at.substring(at.lastIndexOf('/') + 1);
        as(shop.office()).get(other + "/estimates/" + id).then().statusCode(404);
        as(shop.technician()).get(other + "/estimates/new").then().statusCode(404);
        Shop stranger = shops.open("CA-ON", "en");
        as(stranger.technician()).get(at).then().statusCode(404);
    }
}
