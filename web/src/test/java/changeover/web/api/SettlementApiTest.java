package changeover.web.api;

import static changeover.web.AShop.as;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.hasItem;
import static org.hamcrest.CoreMatchers.is;

import changeover.contracts.PostgresForTests;
import changeover.web.office.ABilledShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Over the API: an agreement is worked through every way, ended for a reason and settled once; days are closed and opened. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class SettlementApiTest {

    @Inject
    ABilledShop billed;

    @Test
    void an_agreement_is_asked_about_ended_and_settled() {
        var shop = billed.open("CA-QC", "en");
        Map<String, String> plan =
                as(shop.owner()).get(shop.api("invoices")).then().extract().path("find { it.kind == 'plan' }");
        String agreement = as(shop.owner())
                .get(shop.api("agreements?home=" + plan.get("home")))
                .then()
                .extract()
                .path("[0].id");
        String from = as(shop.owner())
                .get(shop.api("agreements?home=" + plan.get("home")))
                .then()
                .extract()
                .path("[0].from");
        String at = shop.api("agreements/" + agreement + "/settlement");
        as(shop.office())
                .get(at + "?day=" + from)
                .then()
                .statusCode(200)
                .body("ended", is(false))
                .body("day", is(from))
                .body("settled", is((Object) null))
                .body("rule.rule", is("own-terms"))
                .body("ways.way", is(List.of("pro-rata", "work-done", "pro-rata-less-work")))
                .body("ways[0].chosen", is(true))
                .body("ways[0].kept.amount", is("0.00"))
                .body("ways[0].credit.amount", is("389.00"));
        as(shop.office()).get(at + "?day=soon").then().statusCode(422).body("refusals.field", hasItem("day"));
        as(shop.office()).get(at + "?cause=rain").then().statusCode(422).body("refusals.field", hasItem("cause"));
        as(shop.office())
                .get(shop.api("agreements/" + UUID.randomUUID() + "/settlement"))
                .then()
                .statusCode(404);
        var settling = Map.of("way", "pro-rata", "why", "Moves away");
        send(shop.office(), at, settling).statusCode(422).body("refusals[0].code", is("settlement.not-ended"));
        send(
                        shop.office(),
                        shop.api("agreements/" + agreement + "/ending"),
                        Map.of("day", from, "cause", "rain", "why", "Moves away"))
                .statusCode(422)
                .body("refusals.field", hasItem("cause"));
        send(
                        shop.office(),
                        shop.api("agreements/" + agreement + "/ending"),
                        Map.of("day", from, "cause", "moved", "why", "To another town"))
                .statusCode(200);
        as(shop.office()).get(at).then().body("ended", is(true)).body("day", is(from));
        as(shop.office())
                .get(shop.at("agreements/" + agreement))
                .then()
                .body(org.hamcrest.CoreMatchers.containsString("the customer moves away, To another town"));
        send(shop.office(), at, Map.of("way", "by-feel", "why", "x"))
                .statusCode(422)
                .body("refusals.field", hasItem("way"));
        String note = Sending.twice(shop.office(), at, settling)
                .statusCode(201)
                .body("creditNotes.size()", is(1))
                .extract()
                .path("creditNotes[0]");
        as(shop.office())
                .get(at)
                .then()
                .body("settled.kept.amount", is("0.00"))
                .body("settled.day", org.hamcrest.CoreMatchers.notNullValue());
        as(shop.office())
                .get(shop.api("invoices/" + note))
                .then()
                .body("kind", is("credit"))
                .body("subtotal.amount", is("389.00"));
        send(shop.office(), at, settling).statusCode(422).body("refusals[0].code", is("settlement.drafted"));
    }

    @Test
    void days_are_closed_and_opened_again() {
        var shop = billed.open("CA-ON", "en");
        as(shop.office())
                .get(shop.api("periods"))
                .then()
                .statusCode(200)
                .body("closedUntil", is((Object) null))
                .body("closings", is(List.of()));
        String id = Sending.twice(shop.office(), shop.api("periods"), Map.of("until", "2020-12-31"))
                .statusCode(201)
                .body("until", is("2020-12-31"))
                .extract()
                .path("id");
        send(shop.office(), shop.api("periods"), Map.of("until", "2020-12-31"))
                .statusCode(422)
                .body("refusals.field", hasItem("until"));
        send(shop.office(), shop.api("periods"), Map.of("until", "2199-12-31"))
                .statusCode(422)
                .body("refusals[0].code", is("period.to-come"));
        as(shop.office()).get(shop.api("periods")).then().body("closedUntil", is("2020-12-31"));
        String reopening = shop.api("periods/" + id + "/reopening");
        send(shop.office(), reopening, Map.of("why", "A late letter of the bank"))
                .statusCode(404);
        send(shop.owner(), reopening, Map.of("why", "A")).statusCode(422).body("refusals.field", hasItem("why"));
        send(shop.owner(), shop.api("periods/" + UUID.randomUUID() + "/reopening"), Map.of("why", "Again"))
                .statusCode(404);
        Sending.twice(shop.owner(), reopening, Map.of("why", "A late letter of the bank"))
                .statusCode(200)
                .body("why", is("A late letter of the bank"));
        as(shop.office()).get(shop.api("periods")).then().body("closedUntil", is((Object) null));
    }
}
