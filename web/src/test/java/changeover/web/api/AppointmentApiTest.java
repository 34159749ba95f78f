package changeover.web.api;

import static changeover.web.AShop.as;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.nullValue;

import changeover.contracts.PostgresForTests;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** A visit's hour over the API, by the rules of its page. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class AppointmentApiTest extends ATuesday {

    @Test
    void an_hour_is_told_moved_for_a_reason_and_taken_off() {
        var shop = shops.open("CA-QC", "en");
        LocalDate day = tuesday(shop);
        UUID visit = given(shop, day, 9);
        String path = shop.api("visits/" + visit + "/appointment");
        as(shop.technician()).get(path).then().statusCode(200).body("state", equalTo("proposed"));
        Sending.twice(shop.office(), path + "/told", Map.of()).statusCode(200).body("state", equalTo("confirmed"));
        var move = Map.of("technician", shop.technician().toString(), "day", day.toString(), "starts", "10:00");
        send(shop.office(), path, move)
                .statusCode(422)
                .body("refusals[0].code", equalTo("appointment.told-moves-for-a-reason"));
        var said = new java.util.HashMap<String, Object>(move);
        said.put("why", "They are away");
        send(shop.office(), path, said).statusCode(422);
        said.put("askedBy", "customer");
        Sending.twice(shop.office(), path, said).statusCode(200).body("starts", equalTo("10:00:00"));
        as(shop.office())
                .get(path)
                .then()
                .body("state", equalTo("proposed"))
                .body("steps.what", equalTo(List.of("given", "told", "moved")))
                .body("steps[2].askedBy", equalTo("customer"))
                .body("steps[2].was.starts", equalTo("09:00:00"))
                .body("steps[2].by", equalTo("Basil Fenn"));
        send(shop.office(), path + "/removal", Map.of())
                .statusCode(200)
                .body("state", equalTo("without_day"))
                .body("day", nullValue());
        send(shop.office(), shop.api("visits/" + visit + "/ending"), Map.of("how", "not_kept"))
                .statusCode(422);
        Sending.twice(
                        shop.office(),
                        shop.api("visits/" + visit + "/ending"),
                        Map.of("how", "not_kept", "why", "The van broke down"))
                .statusCode(200)
                .body("state", equalTo("not_kept"))
                .body("steps[-1].why", equalTo("The van broke down"));
    }

    @Test
    void a_second_technician_goes_along_and_finds_the_visit() {
        var shop = shops.open("CA-QC", "en");
        LocalDate day = tuesday(shop);
        UUID visit = given(shop, day, 9);
        UUID nils = nils(shop);
        String path = shop.api("visits/" + visit + "/appointment");
        as(nils).get(path).then().statusCode(404);
        Sending.twice(shop.office(), path + "/second", Map.of("technician", nils.toString()))
                .statusCode(200)
                .body("second", equalTo(nils.toString()));
        as(nils).get(path).then().statusCode(200);
        as(nils).get(shop.api("visits/" + visit)).then().statusCode(200);
        send(
                        shop.office(),
                        path + "/second",
                        Map.of("technician", shop.technician().toString()))
                .statusCode(422)
                .body("refusals[0].code", equalTo("appointment.second-is-the-first"));
        send(shop.office(), path + "/second", Map.of()).statusCode(200).body("second", nullValue());
        as(nils).get(path).then().statusCode(404);
        send(nils, path + "/told", Map.of()).statusCode(404);
    }
}
