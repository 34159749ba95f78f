package changeover.web.api;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.PostgresForTests;
import changeover.scheduling.dayplan.Appointments;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** A day laid over the whole crew: homes on no map are half an hour from everywhere, so two rounds cost more than one. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class CrewOrderApiTest extends ATuesday {

    private UUID whose(AShop.Shop shop, UUID visit) {
        return shops.in(shop, () -> appointments.of(visit).orElseThrow().technicianId());
    }

    private UUID given(AShop.Shop shop, LocalDate day, UUID technician) {
        UUID visit = visit(shop, day);
        shops.in(
                shop,
                () -> appointments.give(visit, new Appointments.Slot(technician, day, LocalTime.of(13, 0), null)));
        return visit;
    }

    @Test
    void one_drives_both_visits_and_a_told_one_stays_where_it_is() {
        var shop = shops.open("CA-QC", "en");
        LocalDate day = tuesday(shop);
        UUID nils = nils(shop);
        UUID told = given(shop, day, nils);
        UUID loose = given(shop, day, shop.technician());
        post(shop.office(), shop.at("visits/" + told + "/told"), Map.of()).statusCode(303);
        String path = "/api/v1/" + shop.slug() + "/days/" + day + "/crew-order";
        JsonPath laid =
                as(shop.office()).get(path).then().statusCode(200).extract().jsonPath();
        assertEquals(120, laid.getInt("before"));
        assertEquals(90, laid.getInt("road"));
        as(shop.office())
                .get(shop.at("season/" + day + "/crew"))
                .then()
                .statusCode(200)
                .body(containsString("90 min on the road, 120 min as it stands"))
                .body(containsString("Nils Ober"));
        as(shop.technician()).get(shop.at("season/" + day + "/crew")).then().statusCode(404);
        send(shop.office(), path, Map.of("order", "nobody", "shown", 90))
                .statusCode(422)
                .body("refusals[0].code", equalTo("day-order.changed"));
        send(shop.office(), path, Map.of("order", laid.getString("order"), "shown", 89))
                .statusCode(422);
        send(shop.office(), path, Map.of("order", laid.getString("order"), "shown", 90))
                .statusCode(200)
                .body("moved", equalTo(1));
        assertEquals(nils, whose(shop, loose));
        assertEquals(nils, whose(shop, told));
        send(shop.office(), path, Map.of("order", laid.getString("order"), "shown", 90))
                .statusCode(200)
                .body("moved", equalTo(0));
    }

    @Test
    void the_page_keeps_what_it_showed() {
        var shop = shops.open("CA-QC", "fr");
        LocalDate day = tuesday(shop);
        UUID nils = nils(shop);
        UUID first = given(shop, day, nils);
        UUID second = given(shop, day, shop.technician());
        JsonPath laid = as(shop.office())
                .get("/api/v1/" + shop.slug() + "/days/" + day + "/crew-order")
                .then()
                .extract()
                .jsonPath();
        as(shop.office())
                .get(shop.at("season/" + day + "/order"))
                .then()
                .body(containsString("Répartir entre toute l’équipe"));
        post(shop.office(), shop.at("season/" + day + "/crew"), Map.of("order", laid.getString("order"), "shown", "90"))
                .statusCode(303);
        assertEquals(whose(shop, first), whose(shop, second));
        LocalDate past = day.minusYears(1);
        as(shop.office())
                .get(shop.at("season/" + past + "/crew"))
                .then()
                .statusCode(200)
                .body(containsString("technicien par technicien"));
    }
}
