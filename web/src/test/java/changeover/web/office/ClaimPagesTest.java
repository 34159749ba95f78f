package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;

import changeover.contracts.PostgresForTests;
import changeover.contracts.words.Wording;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
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

/** A replaced part is claimed from its maker and stays on the list until its credit came. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class ClaimPagesTest {

    private static final LocalDate TODAY = LocalDate.now(ZoneId.of("America/Toronto"));

    @Inject
    AShop shops;

    @Inject
    ALivedInHome homes;

    @Inject
    Parts parts;

    @Test
    void a_part_is_claimed_and_its_credit_comes() {
        for (boolean french : List.of(false, true)) {
            Shop shop = shops.open("CA-ON", french ? "fr" : "en");
            UUID home = homes.machines(shop, french ? "fr" : "en").home();
            shops.in(
                    shop,
                    () -> parts.keep(
                            new KnownPart("CAP-45", new Wording("Capacitor", "Condensateur"), "C62", null, null)));
            String id = OrderPagesTest.visit(shop, home);
            String visit = shop.at("visits/" + id);
            as(shop.office())
                    .get(visit + "/claims")
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "rien à réclamer" : "nothing to claim"));
            send(
                            shop.office(),
                            shop.api("visits/" + id + "/closure"),
                            Map.of(
                                    "minutes",
                                    45,
                                    "receivedBy",
                                    "Anselm Birk",
                                    "parts",
                                    List.of(Map.of(
                                            "part", "CAP-45",
                                            "quantity", "1",
                                            "why", "warranty",
                                            "short", "bought on the way",
                                            "oldSerial", "OLD-1",
                                            "newSerial", "NEW-2"))))
                    .statusCode(200);
            as(shop.office())
                    .get(visit + "/claims")
                    .then()
                    .body(containsString("value=\"OLD-1\""), containsString("value=\"NEW-2\""));
            var fields = new HashMap<String, Object>(Map.of(
                    "operation", UUID.randomUUID().toString(),
                    "part", "CAP-45",
                    "equipment", "",
                    "oldSerial", "OLD-1",
                    "newSerial", "NEW-2",
                    "maker", "",
                    "number", "",
                    "credit", french ? "64,50" : "64.50"));
            post(shop.office(), visit + "/claims", fields).statusCode(422).body(containsString("value=\"OLD-1\""));
            fields.put("maker", "Norrland");
            fields.put("claimed", TODAY.plusDays(1).toString());
            post(shop.office(), visit + "/claims", fields)
                    .statusCode(422)
                    .body(containsString("id=\"claimed-wrong\""), containsString("value=\"OLD-1\""));
            LocalDate friday = TODAY.minusDays(3);
            fields.put("claimed", friday.toString());
            String claim = OrderPagesTest.location(post(shop.office(), visit + "/claims", fields));
            as(shop.office())
                    .get(shop.at("parts/claims"))
                    .then()
                    .body(containsString("Norrland"), containsString(french ? "64,50" : "64.50"));
            as(shop.office()).get(visit).then().body(containsString(claim));
            OrderPagesTest.location(post(
                    shop.office(),
                    claim + "/return",
                    Map.of("number", "RC-77", "returned", friday.toString(), "version", "0")));
            post(
                            shop.office(),
                            claim + "/return",
                            Map.of("number", "RC-78", "returned", TODAY.toString(), "version", "0"))
                    .statusCode(422);
            as(shop.office()).get(claim).then().body(containsString("RC-77"), containsString("NEW-2"));
            post(
                            shop.office(),
                            claim + "/return",
                            Map.of(
                                    "number",
                                    "RC-77",
                                    "returned",
                                    friday.toString(),
                                    "claimed",
                                    TODAY.toString(),
                                    "version",
                                    "1"))
                    .statusCode(422)
                    .body(containsString("id=\"returned-wrong\""));
            post(shop.office(), claim + "/credit", Map.of("how", "refused", "day", TODAY.toString(), "words", ""))
                    .statusCode(422);
            String api = shop.api("part-claims/" + claim.substring(claim.lastIndexOf('/') + 1));
            as(shop.office()).get(shop.api("part-claims")).then().body("[0].number", equalTo("RC-77"));
            send(
                            shop.office(),
                            api + "/return",
                            Map.of(
                                    "number",
                                    "RC-77",
                                    "returnedOn",
                                    friday.toString(),
                                    "claimedOn",
                                    friday.minusDays(1).toString(),
                                    "version",
                                    1))
                    .statusCode(200)
                    .body("claimedOn", equalTo(friday.minusDays(1).toString()));
            send(shop.office(), api + "/credit", Map.of("how", "credited", "amount", "60.00", "day", friday.toString()))
                    .statusCode(200)
                    .body("credited.amount", equalTo("60.00"));
            as(shop.office())
                    .get(shop.at("parts/claims"))
                    .then()
                    .body(
                            containsString(french ? "60,00" : "60.00"),
                            containsString(french ? "Aucun fabricant ne doit" : "No maker owes"));
        }
    }
}
