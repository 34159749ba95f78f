package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.customers.Homes;
import changeover.scheduling.calls.CallLists;
import changeover.scheduling.calls.Calls;
import changeover.scheduling.calls.Urgency;
import changeover.web.ALivedInHome;
import changeover.web.AShop;
import changeover.web.AShop.Shop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class CallPagesTest {

    private static final LocalDate TODAY = LocalDate.now(ZoneId.of("America/Toronto"));

    @Inject
    AShop shops;

    @Inject
    ALivedInHome homes;

    @Inject
    Homes all;

    @Inject
    Calls calls;

    @Inject
    CallLists lists;

    /** What somebody types while the caller talks; the home is new. */
    private static Map<String, Object> typed() {
        var fields = new HashMap<String, Object>();
        fields.put("made", UUID.randomUUID().toString());
        fields.put("caller", "Mara Quill");
        fields.put("phone", "555-0142");
        fields.put("day", TODAY.toString());
        fields.put("time", "00:00");
        fields.put("home", "");
        fields.put("street", "9 Tannery Row");
        fields.put("city", "Port Ambrose");
        fields.put("postal", "K0A 1A0");
        fields.put("language", "en");
        fields.put("trouble", "no_heat");
        fields.put("heat", "no");
        fields.put("words", "The furnace clicks and stops");
        fields.put("risks", List.of("infant"));
        fields.put("cost", "145,00");
        fields.put("toldWords", "the trip and the first hour");
        return fields;
    }

    private static String take(Shop shop, Map<String, Object> fields) {
        return post(shop.office(), shop.at("calls"), fields)
                .statusCode(303)
                .extract()
                .header("Location")
                .replaceFirst("^https?://[^/]*", "");
    }

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
            String visit = post(
                            shop.office(),
                            path + "/outcome",
                            Map.of(
                                    "how",
                                    "visit",
                                    "why",
                                    "Somebody has to look",
                                    "minutes",
                                    "60",
                                    "last",
                                    TODAY.toString()))
                    .statusCode(303)
                    .extract()
                    .header("Location")
                    .replaceFirst("^https?://[^/]*", "")
                    .replaceFirst("\\?.*", "");
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
    void the_same_press_twice_is_one_call_and_one_home() {
        var shop = shops.open("CA-ON", "en");
        var fields = typed();
        assertEquals(take(shop, fields), take(shop, fields));
        assertEquals(1, shops.in(shop, () -> lists.waiting()).size());
        assertEquals(1L, shops.in(shop, () -> all.count()));
        assertTrue(shops.in(shop, () -> all.find("quill tannery 5550142", 5))
                .getFirst()
                .toBeRead());
    }

    @Test
    void a_home_that_is_here_is_found_by_name_telephone_or_street() {
        var shop = shops.open("CA-ON", "en");
        UUID home = homes.machines(shop, "en").home();
        for (String looked : List.of("fournier", "555-0148", "larch")) {
            var fields = typed();
            fields.put("do", "find");
            fields.put("q", looked);
            post(shop.office(), shop.at("calls"), fields)
                    .statusCode(200)
                    .body(containsString("value=\"" + home + "\""))
                    .body(containsString("The furnace clicks and stops"));
        }
        var nobody = typed();
        nobody.put("do", "find");
        post(shop.office(), shop.at("calls"), nobody).statusCode(200).body(containsString("No such home is here."));
        var here = typed();
        here.put("home", home.toString());
        here.put("street", "");
        as(shop.office()).get(take(shop, here)).then().body(containsString("14 Larch Street"));
        as(shop.office())
                .get(shop.at("homes/" + home))
                .then()
                .statusCode(200)
                .body(containsString("Mara Quill"))
                .body(containsString("calls/new?home=" + home));
        as(shop.office())
                .get(shop.at("calls/new?home=" + home))
                .then()
                .statusCode(200)
                .body(containsString("value=\"" + home + "\" checked"));
        assertEquals(1L, shops.in(shop, () -> all.count()));
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

    @Test
    void what_nobody_here_has_is_not_found() {
        var shop = shops.open("CA-ON", "en");
        var other = shops.open("CA-ON", "en");
        String theirs = take(other, typed()).replaceFirst(".*/calls/([0-9a-f-]{36}).*", "$1");
        UUID home = homes.machines(other, "en").home();
        for (String call : List.of(theirs, UUID.randomUUID().toString())) {
            as(shop.owner()).get(shop.at("calls/" + call)).then().statusCode(404);
            post(shop.owner(), shop.at("calls/" + call + "/outcome"), Map.of("how", "nothing", "why", "x"))
                    .statusCode(404);
        }
        var fields = typed();
        fields.put("home", home.toString());
        post(shop.owner(), shop.at("calls"), fields).statusCode(404);
        as(shop.owner()).get(shop.at("calls/new?home=" + home)).then().statusCode(404);
        as(shop.technician()).get(shop.at("calls")).then().statusCode(404);
        as(shop.technician()).get(shop.at("calls/new")).then().statusCode(404);
    }
}
