package changeover.web.field;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.customers.AccessCodes;
import changeover.scheduling.closeout.Closures;
import changeover.scheduling.closeout.Operations;
import changeover.web.AShop;
import changeover.web.Shown;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The technician walks from the day's stops through the tasks to the closed visit, without a script. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class FieldPagesTest {

    private static final Pattern TASK = Pattern.compile("/tasks/([0-9a-f-]{36})\"");
    private static final Pattern ASKED =
            Pattern.compile(" name=\"(reading\\.[^\"]+)\" inputmode=\"decimal\" autocomplete");

    private final LocalDate day = LocalDate.now(ZoneId.of("America/Toronto"));

    @Inject
    AShop shops;

    @Inject
    AccessCodes codes;

    @Inject
    Operations operations;

    @Inject
    Closures closures;

    @Test
    void from_the_stops_to_the_closed_visit_in_french() {
        walk(
                shops.open("CA-QC", "fr"),
                "Les arrêts du jour",
                "Aucun arrêt dans votre journée",
                "Garder",
                "Pas aujourd’hui");
    }

    @Test
    void from_the_stops_to_the_closed_visit_in_english() {
        walk(shops.open("CA-QC", "en"), "Today’s stops", "No stop stands in your day", "Keep, ", "Not today");
    }

    private void walk(AShop.Shop shop, String heading, String empty, String keep, String deferred) {
        as(shop.technician()).get(shop.at("field")).then().statusCode(200).body(containsString(empty));
        String home = PlannedVisit.home(shop);
        String visit = PlannedVisit.visit(shop, home);
        String language = heading.startsWith("L") ? "fr" : "en";
        UUID homeId = UUID.fromString(home);
        shops.in(shop, () -> codes.add(homeId, "code", "Side door", "4417"));

        String stops = page(shop, "field", language + "-stops");
        assertTrue(stops.contains(heading) && stops.contains("9 Tannery Row") && stops.contains("08:30"));
        as(shop.technician())
                .queryParam("day", "31/12")
                .get(shop.at("field"))
                .then()
                .statusCode(200);
        as(shop.owner()).get(shop.at("field")).then().statusCode(200).body(containsString("Mika Tarn"));

        String at = "field/visits/" + visit;
        String card = page(shop, at, language + "-visit");
        assertTrue(card.contains("tel:5550131") && !card.contains("4417"));
        post(shop.technician(), shop.at(at + "/codes"), Map.of("reason", "visit"))
                .statusCode(200)
                .header("Cache-Control", "no-store")
                .body(containsString("4417"));
        post(
                        shop.technician(),
                        shop.at(at + "/arrival"),
                        Map.of("made", UUID.randomUUID().toString()))
                .statusCode(303);

        List<String> tasks =
                TASK.matcher(card).results().map(one -> one.group(1)).distinct().toList();
        assertTrue(tasks.size() >= 2, card);
        String first = at + "/tasks/" + tasks.getFirst();
        assertTrue(page(shop, first, language + "-task").contains(keep));
        refused(shop, first, deferred);
        keptOnce(shop, visit, first);
        for (String task : tasks.subList(1, tasks.size())) {
            String shown = page(shop, at + "/tasks/" + task, language + "-task-" + tasks.indexOf(task));
            Matcher asked = ASKED.matcher(shown);
            if (asked.find()) {
                Map<String, String> wrong = form("outcome", "done");
                wrong.put(asked.group(1), "a dozen");
                post(shop.technician(), shop.at(at + "/tasks/" + task), wrong)
                        .statusCode(422)
                        .body(containsString("value=\"a dozen\""));
            }
        }
        close(shop, visit, language);
    }

    private void refused(AShop.Shop shop, String task, String deferred) {
        Map<String, String> typed = form("outcome", "deferred");
        typed.put("text", "<b>Light rust</b>");
        typed.put("language", "fr");
        typed.put("level", "recommended");
        post(shop.technician(), shop.at(task), typed)
                .statusCode(422)
                .body(containsString("id=\"reason-wrong\""))
                .body(containsString(deferred))
                .body(containsString("&lt;b&gt;Light rust"));
        post(shop.technician(), shop.at(task), Map.of("made", "x")).statusCode(422);
    }

    private void keptOnce(AShop.Shop shop, String visit, String task) {
        Map<String, String> typed = form("outcome", "done");
        typed.put("level", "recommended");
        typed.put("text", "Light rust on the pan");
        typed.put("language", "en");
        post(shop.technician(), shop.at(task), typed).statusCode(303);
        int said = said(shop, visit);
        post(shop.technician(), shop.at(task), typed).statusCode(303);
        assertEquals(said, said(shop, visit));
        as(shop.technician()).get(shop.at(task)).then().body(containsString("Light rust on the pan"));
    }

    private int said(AShop.Shop shop, String visit) {
        return shops.in(shop, () -> operations.of(UUID.fromString(visit)).size());
    }

    private void close(AShop.Shop shop, String visit, String language) {
        String at = "field/visits/" + visit + "/closure";
        page(shop, at, language + "-closure");
        Map<String, String> typed = form("minutes", "ten");
        typed.put("by", "Anselm Birk");
        post(shop.technician(), shop.at(at), typed)
                .statusCode(422)
                .body(containsString("id=\"minutes-wrong\""))
                .body(containsString("value=\"Anselm Birk\""));
        typed.put("minutes", "55");
        post(shop.technician(), shop.at(at), typed).statusCode(422).body(containsString("id=\"tasks\""));
        typed.put("rest", "yes");
        for (int times = 0; times < 2; times++) {
            post(shop.technician(), shop.at(at), typed).statusCode(303);
        }
        UUID id = UUID.fromString(visit);
        assertEquals(55, shops.in(shop, () -> closures.of(id).orElseThrow().minutes()));
        page(shop, "field/visits/" + visit, language + "-visit-closed");
        as(shop.technician()).get(shop.at(at)).then().statusCode(200).body(not(containsString("name=\"minutes\"")));
        post(shop.technician(), shop.at("field/visits/" + visit + "/codes"), Map.of("reason", "again"))
                .statusCode(422)
                .body(not(containsString("4417")));
    }

    @Test
    void somebody_elses_visit_is_not_found() {
        AShop.Shop shop = shops.open("CA-QC", "en");
        AShop.Shop other = shops.open("CA-QC", "en");
        String visit = PlannedVisit.visit(shop, PlannedVisit.home(shop));
        for (String page : List.of("", "/closure", "/tasks/" + UUID.randomUUID())) {
            String at = "field/visits/" + visit + page;
            as(other.technician()).get(other.at(at)).then().statusCode(404);
            as(other.technician()).get(shop.at(at)).then().statusCode(404);
            as(shop.technician())
                    .get(shop.at("field/visits/" + UUID.randomUUID() + page))
                    .then()
                    .statusCode(404);
        }
        send(
                shop.owner(),
                shop.api("visits/" + visit + "/appointment"),
                Map.of("technician", shop.owner().toString(), "day", day.toString(), "starts", "10:30"));
        for (String path : List.of("/closure", "/codes", "/arrival")) {
            post(other.technician(), other.at("field/visits/" + visit + path), form("reason", "x"))
                    .statusCode(404);
        }
    }

    private String page(AShop.Shop shop, String path, String name) {
        String page = as(shop.technician())
                .get(shop.at(path))
                .then()
                .statusCode(200)
                .extract()
                .asString();
        Shown.keep("field-" + name, page);
        return page;
    }

    private static Map<String, String> form(String field, String value) {
        Map<String, String> form = new HashMap<>();
        form.put("made", UUID.randomUUID().toString());
        form.put(field, value);
        return form;
    }
}
