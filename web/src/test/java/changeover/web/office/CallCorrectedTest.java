package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.not;
import static org.hamcrest.CoreMatchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.web.field.PlannedVisit;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What was written down of a call is put right and stays to be read; a plan answers within its own hours. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class CallCorrectedTest extends CallTyped {

    private static Map<String, Object> corrected(String words) {
        var fields = new HashMap<String, Object>();
        fields.put("caller", "Mara Quill");
        fields.put("phone", "555-0143");
        fields.put("trouble", "alarm");
        fields.put("heat", "no");
        fields.put("words", words);
        fields.put("risks", List.of("infant"));
        fields.put("correctionWhy", "");
        return fields;
    }

    @Test
    void a_corrected_call_keeps_what_stood_before_and_tells_whoever_goes_there() {
        for (boolean french : List.of(false, true)) {
            var shop = shops.open(french ? "CA-QC" : "CA-ON", french ? "fr" : "en");
            String page = take(shop, typed()).replaceFirst("\\?.*", "");
            String visit = visit(shop, page);
            as(shop.office())
                    .get(page + "/correction")
                    .then()
                    .statusCode(200)
                    .body(containsString("The furnace clicks and stops"))
                    .body(containsString("145"));
            var fields = corrected("An alarm sounds in the cellar");
            post(shop.office(), page + "/correction", fields)
                    .statusCode(422)
                    .body(containsString("told-wrong"))
                    .body(containsString("An alarm sounds in the cellar"));
            fields.put("told", "yes");
            post(shop.office(), page + "/correction", fields).statusCode(422);
            fields.put("correctionWhy", "Misheard");
            post(shop.office(), page + "/correction", fields).statusCode(303);
            as(shop.office())
                    .get(page)
                    .then()
                    .statusCode(200)
                    .body(containsString("An alarm sounds in the cellar"))
                    .body(containsString("The furnace clicks and stops"))
                    .body(containsString(french ? "Ce qui était écrit avant" : "What it said before"))
                    .body(containsString("Misheard"))
                    .body(containsString("Basil Fenn"));
            as(shop.office())
                    .get(visit)
                    .then()
                    .body(containsString("An alarm sounds in the cellar"))
                    .body(not(containsString("The furnace clicks and stops")));
            as(shop.office()).get(shop.at("calls")).then().body(containsString("555-0143"));
            fields.put("promiseDay", TODAY.plusDays(1).toString());
            fields.put("promiseTime", "00:00");
            fields.put("cost", "150,00");
            post(shop.office(), page + "/correction", fields).statusCode(303);
            as(shop.office()).get(page).then().body(containsString("150"));
            post(shop.office(), page + "/correction", fields)
                    .statusCode(422)
                    .body(containsString(french ? "Rien n’a changé" : "Nothing was changed"));
        }
    }

    @Test
    void the_api_corrects_a_call_lists_its_versions_and_the_calls_of_a_home() {
        var shop = shops.open("CA-ON", "en");
        String call = send(
                        shop.office(),
                        shop.api("calls"),
                        Map.of(
                                "caller", "Mara Quill",
                                "trouble", "no_heat",
                                "words", "Cold",
                                "street", "9 Tannery Row",
                                "city", "Port Ambrose"))
                .statusCode(201)
                .extract()
                .path("id");
        String corrections = shop.api("calls/" + call + "/corrections");
        send(shop.office(), corrections, Map.of("caller", "Mara Quill", "trouble", "water", "words", "Wet"))
                .statusCode(422);
        send(
                        shop.office(),
                        corrections,
                        Map.of("caller", "Mara Quill", "trouble", "water", "words", "Wet", "why", "Misheard"))
                .statusCode(200)
                .body("call.trouble", equalTo("water"))
                .body("by", equalTo("Basil Fenn"));
        as(shop.office())
                .get(corrections)
                .then()
                .statusCode(200)
                .body("size()", equalTo(2))
                .body("[0].call.words", equalTo("Cold"))
                .body("[0].why", nullValue())
                .body("[1].why", equalTo("Misheard"));
        String home = as(shop.office())
                .get(shop.api("calls/" + call))
                .then()
                .body("words", equalTo("Wet"))
                .extract()
                .path("home");
        as(shop.office())
                .get(shop.api("calls?home=" + home))
                .then()
                .statusCode(200)
                .body("size()", equalTo(1))
                .body("[0].trouble", equalTo("water"));
        as(shop.technician()).get(corrections).then().statusCode(404);
    }

    @Test
    void a_plan_answers_within_its_own_hours() {
        var shop = shops.open("CA-QC", "en");
        String home = PlannedVisit.home(shop);
        PlannedVisit.visit(shop, home);
        String plan = as(shop.owner()).get(shop.api("plans")).then().extract().path("[0].id");
        post(shop.office(), shop.at("plans/" + plan + "/answer"), Map.of("hours", "0"))
                .statusCode(422);
        post(shop.office(), shop.at("plans/" + plan + "/answer"), Map.of("hours", "6", "nights", "yes"))
                .statusCode(303);
        as(shop.office())
                .get(shop.at("plans/" + plan + "/answer"))
                .then()
                .statusCode(200)
                .body(containsString("value=\"6\""));
        assertEquals(6, hoursPromised(shop, home, "noise"));
        send(shop.office(), shop.api("plans/" + plan + "/answer"), Map.of("hours", 500, "nights", false))
                .statusCode(200)
                .body("hours", equalTo(500));
        assertEquals(72, hoursPromised(shop, home, "noise"));
        send(shop.office(), shop.api("plans/" + plan + "/answer"), Map.of())
                .statusCode(200)
                .body("hours", nullValue());
        send(
                        shop.owner(),
                        shop.api("answer-times"),
                        Map.of("times", List.of(Map.of("urgency", "ordinary", "plan", true, "hours", 50))))
                .statusCode(200);
        assertEquals(50, hoursPromised(shop, home, "noise"));
        send(shop.office(), shop.api("answer-times"), Map.of("times", List.of()))
                .statusCode(404);
    }

    private long hoursPromised(changeover.web.AShop.Shop shop, String home, String trouble) {
        var call = send(
                        shop.office(),
                        shop.api("calls"),
                        Map.of(
                                "caller",
                                "Anselm Birk",
                                "trouble",
                                trouble,
                                "words",
                                "It hums",
                                "heat",
                                "yes",
                                "home",
                                home))
                .statusCode(201)
                .extract();
        Instant rang = Instant.parse(call.<String>path("rangAt"));
        return ChronoUnit.HOURS.between(rang, Instant.parse(call.<String>path("promisedBy")));
    }

    @Test
    void somebody_is_on_call_over_the_api() {
        var shop = shops.open("CA-ON", "en");
        var turn = Map.of(
                "person", shop.technician().toString(),
                "from", TODAY.toString(),
                "last", TODAY.plusDays(6).toString());
        String id = send(shop.office(), shop.api("on-call"), turn)
                .statusCode(201)
                .extract()
                .path("id");
        send(shop.office(), shop.api("on-call"), turn).statusCode(422);
        List<String> people = as(shop.office())
                .get(shop.api("on-call"))
                .then()
                .statusCode(200)
                .extract()
                .path("person");
        assertTrue(people.contains(shop.technician().toString()));
        send(shop.office(), shop.api("on-call/" + id + "/removal"), Map.of())
                .statusCode(200)
                .body("size()", equalTo(0));
        send(shop.office(), shop.api("on-call/" + id + "/removal"), Map.of()).statusCode(404);
    }
}
