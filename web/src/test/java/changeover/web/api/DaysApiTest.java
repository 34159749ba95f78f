package changeover.web.api;

import static changeover.web.AShop.as;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.PostgresForTests;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** The day over the API, by the rules of its pages. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class DaysApiTest extends ATuesday {

    @Test
    void a_day_is_told_and_put_in_order() {
        var shop = shops.open("CA-QC", "en");
        LocalDate day = tuesday(shop);
        UUID told = given(shop, day, 14);
        UUID loose = given(shop, day, 11);
        send(shop.office(), shop.api("visits/" + told + "/appointment/told"), Map.of())
                .statusCode(200);
        String path = shop.api("days/" + day);
        int shown = as(shop.office())
                .get(path + "/orders")
                .then()
                .statusCode(200)
                .body("[0].better", equalTo(true))
                .body("[0].arrivals.stays", equalTo(List.of(false, true)))
                .extract()
                .path("[0].shown");
        String technician = shop.technician().toString();
        send(shop.office(), path + "/orders", Map.of("technician", technician, "shown", 1))
                .statusCode(422)
                .body("refusals[0].code", equalTo("day-order.changed"));
        Sending.twice(shop.office(), path + "/orders", Map.of("technician", technician, "shown", shown))
                .statusCode(200)
                .body("moved.visit", equalTo(List.of(loose.toString())))
                .body("moved[0].starts", equalTo("08:30:00"));
        as(shop.office())
                .get(path)
                .then()
                .statusCode(200)
                .body(
                        "find { it.technician == '" + technician + "' }.stops.state",
                        equalTo(List.of("proposed", "confirmed")));
        Sending.twice(shop.office(), path + "/told", Map.of()).statusCode(200).body("told", equalTo(1));
        send(shop.office(), path + "/told", Map.of()).statusCode(422);
        as(shop.office()).get(shop.api("days/x/orders")).then().statusCode(404);
        as(shop.technician()).get(path).then().statusCode(404);
    }

    @Test
    void a_visit_is_fitted_into_a_day_by_one_of_three_ways() {
        var shop = shops.open("CA-QC", "en");
        LocalDate day = tuesday(shop);
        given(shop, day, 9);
        UUID urgent = visit(shop, day);
        String path = shop.api("visits/" + urgent + "/insertions");
        int shown = as(shop.office())
                .get(path + "?day=" + day)
                .then()
                .statusCode(200)
                .body("ways[0].moved.size()", equalTo(0))
                .extract()
                .path("ways[0].shown");
        send(shop.office(), path, Map.of("day", day.toString(), "shown", 1)).statusCode(422);
        Sending.twice(shop.office(), path, Map.of("day", day.toString(), "shown", shown))
                .statusCode(200)
                .body("appointment.state", equalTo("proposed"))
                .body("appointment.day", equalTo(day.toString()));
        as(shop.office()).get(path + "?day=x").then().statusCode(422);
        as(shop.office())
                .get(shop.api("visits/" + UUID.randomUUID() + "/insertions"))
                .then()
                .statusCode(404);
    }

    @Test
    void the_day_of_somebody_ill_is_shared_out_and_whoever_must_hear_of_it_is_rung() {
        var shop = shops.open("CA-QC", "en");
        var other = shops.open("CA-QC", "en");
        LocalDate day = tuesday(shop);
        UUID nils = nils(shop);
        UUID visit = given(shop, day, 9);
        send(shop.office(), shop.api("visits/" + visit + "/appointment/told"), Map.of())
                .statusCode(200);
        String path = shop.api("days/" + day + "/absences/");
        as(shop.office())
                .get(path + shop.technician())
                .then()
                .statusCode(200)
                .body("visits.technician", equalTo(List.of(nils.toString())));
        send(shop.office(), path + shop.technician(), Map.of()).statusCode(422);
        Sending.twice(shop.office(), path + shop.technician(), Map.of("why", "Ill"))
                .statusCode(200)
                .body("visits[0].told", equalTo(true))
                .body("visits[0].starts", equalTo("09:00:00"));
        as(shop.office()).get(path + other.technician()).then().statusCode(404);
        send(shop.office(), path + other.technician(), Map.of("odd", 1)).statusCode(404);
        String ring = as(shop.office())
                .get(shop.api("rings"))
                .then()
                .statusCode(200)
                .body("size()", equalTo(1))
                .body("[0].technician", equalTo("Nils Ober"))
                .extract()
                .path("[0].id");
        Sending.twice(shop.office(), shop.api("rings/" + ring + "/call"), Map.of())
                .statusCode(200)
                .body("left", equalTo(0));
        send(other.office(), other.api("rings/" + ring + "/call"), Map.of()).statusCode(404);
        String story = as(shop.office())
                .get(shop.api("visits/" + visit + "/appointment"))
                .then()
                .body("state", equalTo("confirmed"))
                .body("steps[-1].why", containsString("Ill"))
                .extract()
                .path("steps[-1].was.technician");
        assertEquals("Mika Tarn", story);
    }
}
