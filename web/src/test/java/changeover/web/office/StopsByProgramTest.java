package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;

import changeover.contracts.PostgresForTests;
import changeover.contracts.tenants.People;
import changeover.web.ALivedInHome;
import changeover.web.AShop;
import changeover.web.AShop.Shop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Programs stop and put back by the same rules, and a closure's finding stops whatever becomes of it. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class StopsByProgramTest {

    @Inject
    AShop shops;

    @Inject
    ALivedInHome homes;

    @Inject
    People people;

    @Test
    void a_program_stops_and_puts_back_by_the_same_rules() {
        Shop shop = shops.open("CA-ON", "en");
        UUID home = homes.machines(shop, "en").home();
        String visit = OrderPagesTest.visit(shop, home);
        send(shop.technician(), shop.api("visits/" + visit + "/stopped"), Map.of("shutOff", "The valve"))
                .statusCode(422)
                .body("refusals[0].field", equalTo("seen"));
        String id = send(
                        shop.technician(),
                        shop.api("visits/" + visit + "/stopped"),
                        Map.of("seen", "A smell of gas", "shutOff", "The valve", "ticket", "gas"))
                .statusCode(201)
                .body("ticket", equalTo("gas"), "place", equalTo("CA-ON"), "duties.size()", equalTo(6))
                .extract()
                .path("id");
        send(shop.technician(), shop.api("stopped/" + id + "/service"), Map.of())
                .statusCode(404);
        String road = shop.api("visits/" + visit + "/stopped/" + id);
        send(shop.technician(), road + "/service", Map.of("how", "in_service", "done", "Relit it"))
                .statusCode(422)
                .body("refusals[0].sentence", containsString("gas ticket"));
        send(shop.technician(), road + "/heat", Map.of("onlyHeat", true, "freezing", true))
                .statusCode(422)
                .body("refusals.field", equalTo(List.of("tonight", "officeWho", "customerWho")));
        send(shop.office(), shop.api("stopped/" + id + "/duties"), Map.of("code", "user-notice", "who", "Basil Fenn"))
                .statusCode(200);
        as(shop.office()).get(shop.api("stopped")).then().body("id", equalTo(List.of(id)));
        shops.in(shop, () -> people.hold(shop.technician(), "gas", "G-9", null));
        send(shop.technician(), road + "/service", Map.of("how", "in_service", "done", "A new valve, tested"))
                .statusCode(200)
                .body("back.number", equalTo("G-9"), "back.by", equalTo("Mika Tarn"));
        as(shop.office()).get(shop.api("stopped?state=over")).then().body("id", equalTo(List.of(id)));
        as(shop.office()).get(shop.api("stopped")).then().body("size()", equalTo(0));
    }

    @Test
    void a_finding_of_a_closure_stops_it_and_an_amendment_leaves_it() {
        Shop shop = shops.open("CA-QC", "en");
        UUID home = homes.machines(shop, "en").home();
        String visit = OrderPagesTest.visit(shop, home);
        send(
                        shop.office(),
                        shop.api("visits/" + visit + "/closure"),
                        Map.of(
                                "minutes",
                                45,
                                "receivedBy",
                                "Anselm Birk",
                                "findings",
                                List.of(Map.of(
                                        "level", "do_not_use",
                                        "sentence", "heat-mark",
                                        "toldTo", "Anselm Birk",
                                        "answer", "yes"))))
                .statusCode(200);
        String stop = as(shop.office())
                .get(shop.api("stopped"))
                .then()
                .body("[0].sentence", equalTo("heat-mark"), "[0].ticket", equalTo("electrical"))
                .extract()
                .path("[0].id");
        String finding = as(shop.office())
                .get(shop.api("stopped/" + stop))
                .then()
                .extract()
                .path("finding");
        send(
                        shop.office(),
                        shop.api("visits/" + visit + "/amendments"),
                        Map.of(
                                "why",
                                "Not seen after all",
                                "operations",
                                List.of(Map.of(
                                        "id",
                                        UUID.randomUUID().toString(),
                                        "device",
                                        "desk",
                                        "sequence",
                                        90,
                                        "at",
                                        "2026-11-30T15:00:00Z",
                                        "kind",
                                        "take_back",
                                        "body",
                                        Map.of("operation", finding)))))
                .statusCode(200);
        as(shop.office()).get(shop.api("stopped")).then().body("id", equalTo(List.of(stop)));
        as(shop.office())
                .get(shop.at("homes/" + home))
                .then()
                .body(containsString("The wiring or breaker shows heat marks"));
    }
}
