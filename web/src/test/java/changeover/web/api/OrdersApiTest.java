package changeover.web.api;

import static changeover.web.AShop.as;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.hasItems;
import static org.hamcrest.CoreMatchers.notNullValue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.calendar.Window;
import changeover.contracts.words.Wording;
import changeover.scheduling.dayplan.Appointments;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
import changeover.scheduling.visits.NewVisit;
import changeover.scheduling.visits.VisitKind;
import changeover.scheduling.visits.Visits;
import changeover.web.ALivedInHome;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class OrdersApiTest {

    private static final LocalDate TODAY = LocalDate.now(ZoneId.of("America/Toronto"));

    @Inject
    AShop shops;

    @Inject
    ALivedInHome homes;

    @Inject
    Visits visits;

    @Inject
    Parts parts;

    @Inject
    Appointments appointments;

    private UUID visit(AShop.Shop shop) {
        UUID home = homes.machines(shop, "en").home();
        return shops.in(shop, () -> {
            parts.keep(new KnownPart("IND-7", new Wording("Inducer motor", "Moteur"), "C62", null, null));
            return visits.make(new NewVisit(
                            home, null, VisitKind.CALL, Window.ofDays(TODAY, TODAY), 60, null, "No heat", List.of()))
                    .id();
        });
    }

    private static Map<String, Object> said(UUID visit) {
        return Map.of(
                "visit", visit.toString(),
                "part", "IND-7",
                "quantity", "2",
                "supplier", "Tannery Supply",
                "expectedOn", TODAY.plusDays(2).toString());
    }

    @Test
    void a_part_is_ordered_comes_and_goes_back() {
        var shop = shops.open("CA-ON", "en");
        UUID visit = visit(shop);
        String id = Sending.twice(shop.office(), shop.api("part-orders"), said(visit))
                .statusCode(201)
                .body("standing", equalTo("coming"))
                .body("next", equalTo("wait"))
                .extract()
                .path("id");
        String at = shop.api("part-orders/" + id);
        send(
                        shop.office(),
                        at + "/promise",
                        Map.of("expectedOn", TODAY.plusDays(4).toString(), "version", 0))
                .statusCode(200)
                .body("expectedOn", equalTo(TODAY.plusDays(4).toString()));
        Sending.twice(shop.office(), at + "/arrival", Map.of("quantity", "2"))
                .statusCode(200)
                .body("arrived", equalTo("2"))
                .body("standing", equalTo("planned"));
        Sending.twice(shop.office(), at + "/notice", Map.of("how", "message", "who", "Adèle Fournier-Blake"))
                .statusCode(200)
                .body("told.here", equalTo(true))
                .body("next", equalTo("give_day"));
        Sending.twice(shop.office(), at + "/visit", Map.of())
                .statusCode(200)
                .body("secondVisit", notNullValue())
                .body("next", equalTo("give_day"));
        String shelf =
                as(shop.office()).get(shop.api("stock")).then().extract().path("places.find { it.kind == 'shelf' }.id");
        String back = Sending.twice(
                        shop.office(),
                        at + "/returns",
                        Map.of("quantity", "1", "from", shelf, "why", "wrong", "credit", "212.40"))
                .statusCode(201)
                .body("returned", equalTo("1"))
                .body("returns[0].credit.amount", equalTo("212.40"))
                .extract()
                .path("returns[0].id");
        as(shop.office()).get(shop.api("part-returns")).then().body("[0].id", equalTo(back));
        Sending.twice(
                        shop.office(),
                        shop.api("part-returns/" + back + "/credit"),
                        Map.of("how", "credited", "amount", "180.00"))
                .statusCode(200)
                .body("returns[0].credited.amount", equalTo("180.00"));
        as(shop.office()).get(shop.api("part-returns")).then().body("size()", equalTo(0));
        as(shop.office()).get(shop.api("stock?part=IND-7")).then().body("held[0].quantity", equalTo("1"));
        as(shop.office()).get(shop.api("part-orders?state=open")).then().body("[0].id", equalTo(id));
    }

    @Test
    void an_order_is_written_down_a_day_late() {
        var shop = shops.open("CA-ON", "en");
        var facts = new HashMap<String, Object>(said(visit(shop)));
        facts.put("orderedOn", TODAY.plusDays(1).toString());
        send(shop.office(), shop.api("part-orders"), facts)
                .statusCode(422)
                .body("refusals.code", hasItems("part-order.ordered-ahead"));
        facts.put("orderedOn", TODAY.minusDays(3).toString());
        facts.put("expectedOn", TODAY.minusDays(1).toString());
        String id = send(shop.office(), shop.api("part-orders"), facts)
                .statusCode(201)
                .body("orderedOn", equalTo(TODAY.minusDays(3).toString()), "standing", equalTo("late"))
                .extract()
                .path("id");
        facts.put("expectedOn", TODAY.minusDays(4).toString());
        send(shop.office(), shop.api("part-orders"), facts)
                .statusCode(422)
                .body("refusals.code", hasItems("part-order.expected-before"));
        as(shop.office()).get(shop.api("part-orders?state=open")).then().body("[0].id", equalTo(id));
    }

    @Test
    void what_was_agreed_to_for_a_visit_holds_for_the_one_that_brings_its_part() {
        var shop = shops.open("CA-QC", "en");
        UUID visit = visit(shop);
        UUID home = shops.in(shop, () -> visits.find(visit).orElseThrow().homeId());
        List<String> estimates = List.of("The motor", "Another day").stream()
                .map(words -> send(
                                shop.office(),
                                shop.api("estimates"),
                                Map.of(
                                        "home", home.toString(),
                                        "visit", visit.toString(),
                                        "words", words,
                                        "validUntil", TODAY.plusDays(20).toString(),
                                        "others",
                                                List.of(Map.of(
                                                        "words",
                                                        "Sealing",
                                                        "quantity",
                                                        "2",
                                                        "unit",
                                                        "C62",
                                                        "unitPrice",
                                                        "50.25"))))
                        .statusCode(201)
                        .extract()
                        .<String>path("id"))
                .toList();
        String agreed = shop.api("estimates/" + estimates.getFirst());
        send(shop.office(), agreed + "/offer", Map.of()).statusCode(200);
        send(shop.office(), agreed + "/answer", Map.of("how", "accepted", "by", "Anselm Birk", "channel", "call"))
                .statusCode(200)
                .body("visits.size()", equalTo(0));
        String order = send(shop.office(), shop.api("part-orders"), said(visit))
                .statusCode(201)
                .extract()
                .path("id");
        String second = send(shop.office(), shop.api("part-orders/" + order + "/visit"), Map.of())
                .statusCode(200)
                .extract()
                .path("secondVisit");
        as(shop.office()).get(agreed).then().body("visits", equalTo(List.of(second)));
        as(shop.office())
                .get(shop.api("estimates/" + estimates.getLast()))
                .then()
                .body("visits.size()", equalTo(0));
    }

    @Test
    void what_is_wrong_is_said_at_its_member_and_a_colleagues_visit_is_not_found() {
        var shop = shops.open("CA-ON", "en");
        var other = shops.open("CA-ON", "en");
        UUID visit = visit(shop);
        send(shop.office(), shop.api("part-orders"), Map.of("visit", visit.toString()))
                .statusCode(422)
                .body("refusals.field", hasItems("part", "quantity", "expectedOn"));
        send(other.office(), other.api("part-orders"), said(visit)).statusCode(404);
        send(shop.technician(), shop.api("part-orders"), said(visit)).statusCode(404);
        as(shop.technician()).get(shop.api("part-orders")).then().statusCode(404);
        shops.in(
                shop,
                () -> appointments.give(visit, new Appointments.Slot(shop.technician(), TODAY, LocalTime.NOON, null)));
        send(shop.technician(), shop.api("part-orders"), said(visit)).statusCode(201);
        String id = send(shop.office(), shop.api("part-orders"), said(visit))
                .statusCode(201)
                .extract()
                .path("id");
        as(other.office()).get(other.api("part-orders/" + id)).then().statusCode(404);
        send(shop.office(), shop.api("part-orders/" + id + "/ending"), Map.of("why", "No longer made"))
                .statusCode(200)
                .body("standing", equalTo("given_up"));
    }
}
