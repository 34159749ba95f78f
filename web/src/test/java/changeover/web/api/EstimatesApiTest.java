package changeover.web.api;

import static changeover.web.AShop.as;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.hasItems;
import static org.hamcrest.CoreMatchers.notNullValue;

import changeover.contracts.PostgresForTests;
import changeover.web.AQuebecHome;
import changeover.web.AShop;
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

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class EstimatesApiTest {

    private static final LocalDate TODAY = LocalDate.now(ZoneId.of("America/Toronto"));

    @Inject
    AShop shops;

    @Inject
    AQuebecHome homes;

    private static Map<String, Object> said(UUID home) {
        return new HashMap<>(Map.of(
                "home", home.toString(),
                "words", "Two new sensors",
                "validUntil", TODAY.plusDays(20).toString(),
                "deposit", "40.00",
                "others", List.of(Map.of("words", "Sealing", "quantity", "2", "unit", "C62", "unitPrice", "50.25"))));
    }

    @Test
    void an_estimate_goes_from_its_draft_to_its_visit() {
        var shop = shops.open("CA-QC", "en");
        UUID home = homes.sold(shop, "en").home();
        String id = Sending.twice(shop.office(), shop.api("estimates"), said(home))
                .statusCode(201)
                .body("state", equalTo("draft"))
                .body("subtotal.amount", equalTo("100.50"))
                .body("total.amount", equalTo("115.55"))
                .extract()
                .path("id");
        String at = shop.api("estimates/" + id);
        var changed = said(home);
        changed.remove("home");
        changed.put("words", "Two sensors and a seal");
        as(shop.office())
                .header("Operation-Id", UUID.randomUUID().toString())
                .header("If-Match", "\"7\"")
                .contentType("application/json")
                .body(changed)
                .put(at)
                .then()
                .statusCode(422);
        as(shop.office())
                .header("Operation-Id", UUID.randomUUID().toString())
                .header("If-Match", "\"0\"")
                .contentType("application/json")
                .body(changed)
                .put(at)
                .then()
                .statusCode(200)
                .body("words", equalTo("Two sensors and a seal"));
        as(shop.office()).get(at + ".pdf").then().statusCode(404);
        Sending.twice(shop.office(), at + "/offer", Map.of())
                .statusCode(200)
                .body("state", equalTo("offered"))
                .body("number", notNullValue());
        as(shop.office()).get(at + ".pdf").then().statusCode(200).contentType("application/pdf");
        as(shop.office())
                .get(shop.api("estimates"))
                .then()
                .body("[0].id", equalTo(id))
                .body("[0].total.amount", equalTo("115.55"));
        send(shop.office(), at + "/visits", Map.of("last", TODAY.toString()))
                .statusCode(422)
                .body("refusals.code", hasItems("estimate.not-accepted"));
        send(shop.office(), at + "/answer", Map.of("how", "accepted", "by", "Anselm Birk", "channel", "site"))
                .statusCode(422)
                .body("refusals.code", hasItems("estimate.channel-refused"))
                .body("refusals.field", hasItems("channel"));
        Sending.twice(shop.office(), at + "/answer", Map.of("how", "accepted", "by", "Anselm Birk", "channel", "call"))
                .statusCode(200)
                .body("state", equalTo("accepted"))
                .body("accepted.amount", equalTo("100.50"));
        Sending.twice(
                        shop.office(),
                        at + "/visits",
                        Map.of("last", TODAY.plusDays(3).toString()))
                .statusCode(201)
                .body("visits.size()", equalTo(1));
        Sending.twice(shop.office(), at + "/deposits", Map.of("amount", "40.00", "way", "card"))
                .statusCode(201)
                .body("deposit", notNullValue());
        Sending.twice(
                        shop.office(),
                        at + "/consents",
                        Map.of("amount", "120.00", "by", "Anselm Birk", "channel", "call", "words", "A third"))
                .statusCode(201)
                .body("accepted.amount", equalTo("120.00"))
                .body("more[0].words", equalTo("A third"));
        as(shop.office()).get(shop.api("estimates?state=over")).then().body("[0].state", equalTo("accepted"));
    }

    @Test
    void what_is_wrong_is_said_at_its_member_and_anothers_is_not_found() {
        var shop = shops.open("CA-QC", "en");
        var other = shops.open("CA-QC", "en");
        UUID home = homes.sold(shop, "en").home();
        var said = said(home);
        said.put("parts", List.of(Map.of("code", "no-such", "quantity", "1")));
        send(shop.office(), shop.api("estimates"), said)
                .statusCode(422)
                .body("refusals.code", hasItems("estimate.no-such-part"));
        send(other.office(), other.api("estimates"), said(home)).statusCode(404);
        String id = send(shop.office(), shop.api("estimates"), said(home))
                .statusCode(201)
                .extract()
                .path("id");
        as(other.office()).get(other.api("estimates/" + id)).then().statusCode(404);
        send(shop.office(), shop.api("estimates/" + id + "/withdrawal"), Map.of("by", "Mika Tarn", "why", "Twice"))
                .statusCode(200)
                .body("state", equalTo("withdrawn"));
    }

    @Test
    void no_estimate_and_no_deposit_goes_beyond_its_most() {
        var shop = shops.open("CA-QC", "en");
        UUID home = homes.sold(shop, "en").home();
        var beyond = said(home);
        var line = Map.of("words", "x", "quantity", "99999", "unit", "C62", "unitPrice", "99999999.99");
        beyond.put("others", List.of(line));
        send(shop.office(), shop.api("estimates"), beyond)
                .statusCode(422)
                .body("refusals[0].code", equalTo("invoice.line-too-much"))
                .body("refusals[0].field", equalTo("other-0-price"));
        var most = Map.of("words", "x", "quantity", "1", "unit", "C62", "unitPrice", "99999999.99");
        beyond.put("others", List.of(most));
        send(shop.office(), shop.api("estimates"), beyond)
                .statusCode(422)
                .body("refusals[0].code", equalTo("invoice.lines-too-much"));
        var late = said(home);
        late.put("validUntil", "9998-12-31");
        send(shop.office(), shop.api("estimates"), late)
                .statusCode(422)
                .body("refusals[0].code", equalTo("typed.age"))
                .body("refusals[0].field", equalTo("validUntil"));
        String id = send(shop.office(), shop.api("estimates"), said(home))
                .statusCode(201)
                .extract()
                .path("id");
        String at = shop.api("estimates/" + id);
        send(shop.office(), at + "/offer", Map.of()).statusCode(200);
        send(shop.office(), at + "/answer", Map.of("how", "accepted", "by", "Anselm Birk", "channel", "call"))
                .statusCode(200);
        send(shop.office(), at + "/deposits", Map.of("amount", "115.00", "way", "card"))
                .statusCode(201);
        send(shop.office(), at + "/deposits", Map.of("amount", "0.56", "way", "card"))
                .statusCode(422)
                .body("refusals[0].code", equalTo("estimate.deposits-beyond-accepted"))
                .body("refusals[0].field", equalTo("amount"));
        send(shop.office(), at + "/deposits", Map.of("amount", "0.55", "way", "card"))
                .statusCode(201);
    }
}
