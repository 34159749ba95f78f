package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.scheduling.calls.CallLists;
import changeover.scheduling.calls.Urgency;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class CallPagesTest extends CallTyped {

    @Inject
    CallLists lists;

    @Test
    void a_call_without_a_plan_goes_from_first_ring_to_a_visit_on_the_technicians_day() {
        for (boolean french : List.of(false, true)) {
            var shop = shops.open(french ? "CA-QC" : "CA-ON", french ? "fr" : "en");
            as(shop.office())
                    .get(shop.at("calls"))
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "Aucun appel n’attend de réponse." : "No call waits for an answer."));
            String empty = as(shop.office())
                    .get(shop.at("calls/new"))
                    .then()
                    .statusCode(200)
                    .extract()
                    .asString();
            int life = empty.indexOf(french ? "Tout le monde sort" : "Everybody leaves the home now");
            assertTrue(life > 0 && empty.contains("911"));
            assertTrue(life < empty.indexOf("name=\"risks\"") && life < empty.indexOf("name=\"made\""));
            String page = take(shop, typed());
            as(shop.office())
                    .get(page)
                    .then()
                    .statusCode(200)
                    .body(containsString("9 Tannery Row"))
                    .body(containsString("The furnace clicks and stops"))
                    .body(containsString(french ? "Un nourrisson y habite" : "An infant lives there"))
                    .body(containsString(french ? "sans formule" : "no plan"))
                    .body(containsString("145"));
            as(shop.office())
                    .get(shop.at("today"))
                    .then()
                    .body(containsString(french ? "Un appel attend une réponse." : "One call waits for an answer."));
            String path = page.replaceFirst("\\?.*", "");
            String visit = visit(shop, path);
            as(shop.office()).get(visit).then().body(containsString("Mara Quill, 555-0142"));
            post(
                            shop.office(),
                            visit + "/appointment",
                            Map.of(
                                    "technician",
                                    shop.technician().toString(),
                                    "day",
                                    TODAY.toString(),
                                    "starts",
                                    "08:00"))
                    .statusCode(303);
            as(shop.technician()).get(shop.at("field")).then().body(containsString("9 Tannery Row"));
            as(shop.office())
                    .get(shop.at("calls"))
                    .then()
                    .body(containsString("Mika Tarn"))
                    .body(containsString(visit));
            post(shop.office(), path + "/outcome", Map.of("how", "nothing", "why", "Again"))
                    .statusCode(422)
                    .body(containsString(french ? "a déjà eu sa réponse" : "answered already"));
        }
    }

    @Test
    void life_comes_first_and_nothing_typed_is_lost() {
        for (boolean french : List.of(false, true)) {
            var shop = shops.open("CA-QC", french ? "fr" : "en");
            for (Map<String, Object> risky : List.of(
                    Map.<String, Object>of("risks", List.of("gas", "age")),
                    Map.<String, Object>of("risks", List.of(), "trouble", "alarm"))) {
                var fields = typed();
                fields.putAll(risky);
                String page = post(shop.office(), shop.at("calls"), fields)
                        .statusCode(422)
                        .body(containsString("9 Tannery Row"))
                        .body(containsString("The furnace clicks and stops"))
                        .body(containsString("the trip and the first hour"))
                        .body(containsString("145,00"))
                        .body(containsString("told-wrong"))
                        .extract()
                        .asString();
                assertTrue(page.indexOf("911") < page.indexOf("<form method=\"post\" action=\"" + shop.at("calls")));
                assertTrue(page.contains(french ? "Dites-leur d’abord" : "Tell them first: everybody leaves the home"));
            }
            var told = typed();
            told.put("risks", List.of("gas"));
            told.put("told", "yes");
            as(shop.office())
                    .get(take(shop, told))
                    .then()
                    .body(containsString(french ? "Vie en danger" : "Life at risk"))
                    .body(containsString("911"));
            var waiting = shops.in(shop, () -> lists.waiting());
            assertEquals(
                    List.of(Urgency.LIFE),
                    waiting.stream().map(CallLists.Row::urgency).toList());
        }
    }

    @Test
    void what_is_wrong_is_said_at_its_field() {
        var shop = shops.open("CA-QC", "fr");
        var fields = typed();
        fields.put("caller", "");
        fields.put("city", "");
        fields.put("time", "25:00");
        fields.put("trouble", "");
        fields.put("promiseTime", "10:00");
        fields.put("cost", "beaucoup");
        var page = post(shop.office(), shop.at("calls"), fields).statusCode(422).body(containsString("9 Tannery Row"));
        for (String field : List.of("caller", "city", "time", "trouble", "promiseDay", "cost")) {
            page.body(containsString("id=\"" + field + "-wrong\""));
        }
        page.body(containsString("beaucoup"));
        fields = typed();
        fields.put("day", TODAY.plusDays(1).toString());
        post(shop.office(), shop.at("calls"), fields)
                .statusCode(422)
                .body(containsString("Cette heure n’est pas encore venue."));
        fields = typed();
        fields.put("phone", "call my office");
        post(shop.office(), shop.at("calls"), fields).statusCode(422).body(containsString("phone-wrong"));
        String path = take(shop, typed()).replaceFirst("\\?.*", "");
        post(shop.office(), path + "/outcome", Map.of("how", "visit", "why", "", "minutes", "x", "last", ""))
                .statusCode(422)
                .body(containsString("why-wrong"))
                .body(containsString("minutes-wrong"))
                .body(containsString("last-wrong"));
        post(shop.office(), path + "/outcome", Map.of("how", "advice", "why", "Le filtre à l’envers"))
                .statusCode(303);
        as(shop.office()).get(path).then().body(containsString("Un conseil")).body(containsString("à l’envers"));
        as(shop.office()).get(shop.at("today")).then().body(not(containsString("attend une réponse")));
    }
}
