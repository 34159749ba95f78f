package changeover.web.field;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.tenants.Today;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** An instrument is written down, runs out, is told of, and is named at a reading. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class InstrumentsTest {

    private static final Pattern TASK = Pattern.compile("/tasks/([0-9a-f-]{36})");
    private static final Pattern NUMBER = Pattern.compile("name=\"(reading\\.[^\"]+)\" inputmode=\"decimal\"");

    @Inject
    AShop shops;

    @Inject
    EntityManager rows;

    @Inject
    Today today;

    /** The page of the first task that asks for a number, and that number's field. */
    private record Measuring(String path, String field, String task) {}

    private Measuring measuring(AShop.Shop shop, String at) {
        String card = as(shop.technician()).get(shop.at(at)).then().extract().asString();
        for (String task :
                TASK.matcher(card).results().map(one -> one.group(1)).distinct().toList()) {
            String path = at + "/tasks/" + task;
            Matcher found = NUMBER.matcher(
                    as(shop.technician()).get(shop.at(path)).then().extract().asString());
            if (found.find()) {
                return new Measuring(path, found.group(1), task);
            }
        }
        throw new AssertionError("no task of the visit asks for a number: " + card);
    }

    @Test
    void a_reading_carries_its_instrument_and_one_out_of_calibration_is_flagged() {
        for (String language : List.of("en", "fr")) {
            boolean french = language.equals("fr");
            var shop = shops.open("CA-QC", language);
            LocalDate day = shops.in(shop, () -> today.day());
            String list = shop.at("shop/instruments");
            post(shop.office(), list, Map.of("name", "Thermometer", "serial", ""))
                    .statusCode(422);
            post(
                            shop.office(),
                            list,
                            Map.of(
                                    "name",
                                    "Thermometer",
                                    "serial",
                                    "T-7",
                                    "until",
                                    day.minusDays(3).toString()))
                    .statusCode(303);
            post(shop.office(), list, Map.of("name", "Thermometer", "serial", "T-7"))
                    .statusCode(422);
            String id = as(shop.technician())
                    .get(shop.api("instruments"))
                    .then()
                    .statusCode(200)
                    .extract()
                    .path("[0].id");
            post(
                            shop.office(),
                            list + "/" + id + "/holder",
                            Map.of("person", shop.technician().toString()))
                    .statusCode(303);
            as(shop.office())
                    .get(list)
                    .then()
                    .body(containsString(french ? "Mika Tarn l’a" : "Mika Tarn has it"))
                    .body(containsString(french ? "étalonnage expiré" : "calibration is over"));
            as(shop.office()).get(shop.at("today")).then().body(containsString("T-7"));
            String visit = PlannedVisit.visit(shop, PlannedVisit.home(shop));
            String at = "field/visits/" + visit;
            post(
                            shop.technician(),
                            shop.at(at + "/arrival"),
                            Map.of("made", UUID.randomUUID().toString()))
                    .statusCode(303);
            Measuring measuring = measuring(shop, at);
            String over = french ? "Thermometer, T-7\u00a0: étalonnage expiré" : "Thermometer, T-7: calibration over";
            as(shop.technician()).get(shop.at(measuring.path())).then().body(containsString(over));
            var form = new HashMap<String, String>(Map.of(
                    "made",
                    UUID.randomUUID().toString(),
                    "outcome",
                    "done",
                    measuring.field(),
                    "20",
                    "instrument",
                    UUID.randomUUID().toString(),
                    "level",
                    "nothing"));
            post(shop.technician(), shop.at(measuring.path()), form).statusCode(422);
            form.put("made", UUID.randomUUID().toString());
            form.put("instrument", id);
            post(shop.technician(), shop.at(measuring.path()), form).statusCode(303);
            as(shop.technician())
                    .get(shop.at(at + "/closure"))
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "hors étalonnage" : "out of calibration"))
                    .body(containsString(over));
            Object[] kept = shops.in(shop, () -> (Object[]) rows.createNativeQuery(
                            "select instrument, cast(instrument_until as text) from reading where instrument_id is not null")
                    .getSingleResult());
            assertEquals("Thermometer, T-7", kept[0]);
            assertEquals(day.minusDays(3).toString(), kept[1]);
            post(
                            shop.technician(),
                            shop.at(at + "/closure"),
                            Map.of(
                                    "made",
                                    UUID.randomUUID().toString(),
                                    "rest",
                                    "yes",
                                    "minutes",
                                    "55",
                                    "by",
                                    "Anselm Birk"))
                    .statusCode(303);
            as(shop.office())
                    .get(shop.at("visits/" + visit))
                    .then()
                    .statusCode(200)
                    .body(containsString("Thermometer, T-7"))
                    .body(containsString(
                            french ? "étalonnage expiré, dernier jour" : "calibration was over, last day"));
        }
    }

    @Test
    void a_calibration_and_an_end_are_written_over_the_api() {
        var shop = shops.open("CA-ON", "en");
        LocalDate day = shops.in(shop, () -> today.day());
        String id = send(shop.office(), shop.api("instruments"), Map.of("name", "Manometer", "serial", "M-1"))
                .statusCode(201)
                .body("calibratedUntil", equalTo(null))
                .extract()
                .path("id");
        String one = shop.api("instruments/" + id);
        send(
                        shop.office(),
                        one + "/calibration",
                        Map.of("day", day.toString(), "until", day.minusDays(1).toString()))
                .statusCode(422);
        send(
                        shop.office(),
                        one + "/calibration",
                        Map.of("day", day.toString(), "until", day.plusYears(1).toString()))
                .statusCode(200)
                .body("calibratedUntil", equalTo(day.plusYears(1).toString()));
        as(shop.office()).get(shop.at("today")).then().body(not(containsString("M-1")));
        send(shop.office(), one + "/holder", Map.of("person", UUID.randomUUID().toString()))
                .statusCode(422);
        send(shop.office(), one + "/holder", Map.of("person", shop.technician().toString()))
                .statusCode(200)
                .body("holderName", equalTo("Mika Tarn"));
        send(shop.office(), one + "/end", Map.of()).statusCode(200);
        as(shop.office()).get(one).then().statusCode(404);
        assertTrue(shops.in(
                shop,
                () -> !rows.createNativeQuery("select 1 from instrument_end")
                        .getResultList()
                        .isEmpty()));
    }
}
