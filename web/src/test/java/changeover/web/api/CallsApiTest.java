package changeover.web.api;

import static changeover.web.AShop.as;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.hasItems;
import static org.hamcrest.CoreMatchers.notNullValue;
import static org.hamcrest.CoreMatchers.nullValue;

import changeover.contracts.PostgresForTests;
import changeover.web.ALivedInHome;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class CallsApiTest {

    @Inject
    AShop shops;

    @Inject
    ALivedInHome homes;

    private static Map<String, Object> said() {
        return new HashMap<>(Map.of(
                "caller", "Mara Quill",
                "phone", "555-0142",
                "trouble", "no_heat",
                "heat", "no",
                "infant", true,
                "words", "The furnace clicks and stops",
                "street", "9 Tannery Row",
                "city", "Port Ambrose",
                "told", "145.00"));
    }

    @Test
    void a_call_from_a_new_home_is_taken_once_and_becomes_a_visit() {
        var shop = shops.open("CA-ON", "en");
        String call = Sending.twice(shop.office(), shop.api("calls"), said())
                .statusCode(201)
                .body("urgency", equalTo("urgent"))
                .body("risks", equalTo(List.of("infant")))
                .body("told.amount", equalTo("145.00"))
                .body("agreement", nullValue())
                .body("outcome", nullValue())
                .extract()
                .path("id");
        as(shop.office())
                .get(shop.api("calls"))
                .then()
                .statusCode(200)
                .body("size()", equalTo(1))
                .body("[0].address", equalTo("9 Tannery Row, Port Ambrose"))
                .body("[0].late", equalTo(false));
        as(shop.office())
                .get(shop.api("homes?q=tannery"))
                .then()
                .body("size()", equalTo(1))
                .body("[0].toBeRead", equalTo(true));
        String visit = Sending.twice(
                        shop.office(),
                        shop.api("calls/" + call + "/outcome"),
                        Map.of("how", "visit", "why", "Somebody has to look"))
                .statusCode(200)
                .body("outcome.how", equalTo("visit"))
                .body("outcome.visit", notNullValue())
                .extract()
                .path("outcome.visit");
        as(shop.office())
                .get(shop.api("visits/" + visit))
                .then()
                .body("visit.kind", equalTo("call"))
                .body("visit.minutes", equalTo(60));
        send(shop.office(), shop.api("calls/" + call + "/outcome"), Map.of("how", "nothing", "why", "Twice"))
                .statusCode(422)
                .body("refusals.code", hasItems("call.answered"));
        as(shop.office()).get(shop.api("calls/" + call)).then().body("outcome.why", equalTo("Somebody has to look"));
        as(shop.office()).get(shop.api("calls?state=over")).then().body("size()", equalTo(0));
    }

    @Test
    void life_comes_first_here_too() {
        var shop = shops.open("CA-QC", "fr");
        var said = said();
        said.put("gas", true);
        send(shop.office(), shop.api("calls"), said)
                .statusCode(422)
                .body("refusals.code", hasItems("call.life-first"))
                .body("refusals.field", hasItems("toldToLeave"))
                .body("refusal", containsString("numéro d’urgence"));
        said.put("toldToLeave", true);
        send(shop.office(), shop.api("calls"), said).statusCode(201).body("urgency", equalTo("life"));
        as(shop.office()).get(shop.api("homes?q=tannery")).then().body("size()", equalTo(1));
    }

    @Test
    void what_is_wrong_is_said_at_its_member() {
        var shop = shops.open("CA-ON", "en");
        send(
                        shop.office(),
                        shop.api("calls"),
                        Map.of(
                                "trouble",
                                "rattles",
                                "rangAt",
                                "at noon",
                                "heat",
                                "some",
                                "promisedBy",
                                "soon",
                                "told",
                                "1.005"))
                .statusCode(422)
                .body(
                        "refusals.field",
                        hasItems(
                                "trouble",
                                "rangAt",
                                "heat",
                                "promisedBy",
                                "told",
                                "caller",
                                "words",
                                "street",
                                "city"));
        var ahead = said();
        ahead.put("rangAt", "2031-01-11T06:40:00-05:00");
        send(shop.office(), shop.api("calls"), ahead).statusCode(422).body("refusals.code", hasItems("call.ahead"));
        var early = said();
        early.put("rangAt", "2026-01-11T06:40:00-05:00");
        early.put("promisedBy", "2026-01-11T06:00:00-05:00");
        send(shop.office(), shop.api("calls"), early).statusCode(422).body("refusals.field", hasItems("promisedBy"));
        as(shop.office()).get(shop.api("calls?state=lost")).then().statusCode(422);
    }

    @Test
    void what_nobody_here_has_is_not_found() {
        var shop = shops.open("CA-ON", "en");
        var other = shops.open("CA-ON", "en");
        String theirs = send(other.office(), other.api("calls"), said())
                .statusCode(201)
                .extract()
                .path("id");
        for (String id : List.of(theirs, UUID.randomUUID().toString())) {
            as(shop.owner()).get(shop.api("calls/" + id)).then().statusCode(404);
            send(shop.owner(), shop.api("calls/" + id + "/outcome"), Map.of("how", "x"))
                    .statusCode(404);
        }
        var said = said();
        said.put("home", homes.machines(other, "en").home().toString());
        send(shop.owner(), shop.api("calls"), said).statusCode(404);
        as(shop.technician()).get(shop.api("calls")).then().statusCode(404);
    }
}
