package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;

import changeover.contracts.PostgresForTests;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** A plan is written, refused, kept, tried on a home, put on sale and withdrawn. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class PlanPagesTest {

    private static final String FILE = """
            home,customer,street,city,region,country,unit,kind,fits
            h,Anselm Birk,9 Tannery Row,Port Ambrose,QC,CA,Filter,filter-slot,size=16x25x4; thickness=4
            h,Anselm Birk,9 Tannery Row,Port Ambrose,QC,CA,Drain,condensate,
            """;

    @Inject
    AShop shops;

    @Test
    void a_business_without_plans_is_told_where_to_begin() {
        var shop = shops.open("CA-QC", "fr");
        as(shop.office())
                .get(shop.at("plans"))
                .then()
                .statusCode(200)
                .body(containsString("Aucune formule encore"))
                .body(containsString("Écrire une formule"));
        as(shop.office())
                .get(shop.at("plans/new"))
                .then()
                .statusCode(200)
                .body(containsString("garantie supplémentaire"))
                .body(containsString("Ce qui est promis"));
        as(shop.technician()).get(shop.at("plans")).then().statusCode(404);
    }

    @Test
    void what_is_wrong_is_said_at_its_place_and_nothing_typed_is_lost() {
        var shop = shops.open("CA-ON", "en");
        var typed = new HashMap<String, Object>(two(shop));
        typed.put("discountPercent", "110 <b>");
        typed.put("code", "Two Turns");
        typed.put("nameFr", "");
        post(shop.office(), shop.at("plans/new"), typed)
                .statusCode(422)
                .body(containsString("110 &lt;b&gt;"))
                .body(not(containsString("110 <b>")))
                .body(containsString("discountPercent-wrong"))
                .body(containsString("code-wrong"))
                .body(containsString("nameFr-wrong"))
                .body(containsString("value=\"" + tasks(shop).getFirst() + "\" checked"));
        draft(shop);
        post(shop.office(), shop.at("plans/new"), two(shop))
                .statusCode(422)
                .body(containsString("code-wrong"))
                .body(containsString("Another plan already has that code"));
    }

    @Test
    void from_the_draft_to_the_sale_and_back() {
        var shop = shops.open("CA-QC", "fr");
        String plan = draft(shop);
        as(shop.office()).get(plan).then().statusCode(200).body(containsString("pas encore en vente"));

        var changed = new HashMap<String, Object>(two(shop));
        changed.put("version", "0");
        changed.put("nameFr", "Deux tours");
        changed.put("price", "389,00");
        changed.remove("tasks");
        post(shop.office(), plan, changed).statusCode(303);
        post(shop.office(), plan, changed).statusCode(422);
        post(shop.office(), plan + "/sale", Map.of("day", LocalDate.now().toString()))
                .statusCode(422)
                .body(containsString("ne promet encore aucune"));

        changed.put("version", version(plan, shop));
        changed.put("tasks", tasks(shop));
        post(shop.office(), plan, changed).statusCode(303);
        post(shop.office(), plan + "/sale", Map.of("day", "31/12"))
                .statusCode(422)
                .body(containsString("31/12"));
        String day = LocalDate.now().minusDays(2).toString();
        post(shop.office(), plan + "/sale", Map.of("day", day)).statusCode(303);
        as(shop.office())
                .get(shop.at("plans"))
                .then()
                .statusCode(200)
                .body(containsString("Deux tours"))
                .body(containsString("389"))
                .body(containsString("en vente depuis le"));
        post(shop.office(), plan + "/withdrawal", Map.of("day", day)).statusCode(303);
        as(shop.office()).get(shop.at("plans")).then().body(containsString("retirée le"));
    }

    @Test
    void a_task_may_have_a_rhythm_of_its_own_and_further_machines_a_price() {
        var shop = shops.open("CA-QC", "fr");
        String plan = draft(shop);
        String task = tasks(shop).getFirst();
        var changed = new HashMap<String, Object>(two(shop));
        changed.put("version", version(plan, shop));
        changed.put("often-" + task, "months");
        changed.put("every-" + task, "jamais");
        changed.put("extra-ductless-head", "45,50");
        post(shop.office(), plan, changed)
                .statusCode(422)
                .body(containsString("value=\"jamais\""))
                .body(containsString("value=\"45,50\""));
        changed.put("every-" + task, "2");
        post(shop.office(), plan, changed).statusCode(303);
        as(shop.office())
                .get(plan)
                .then()
                .body(containsString("name=\"every-" + task + "\" type=\"text\" value=\"2\""))
                .body(containsString("name=\"within-ductless-head\""))
                .body(containsString("value=\"45,5\""));
        changed.put("version", version(plan, shop));
        changed.put("often-" + task, "catalogue");
        changed.remove("extra-ductless-head");
        post(shop.office(), plan, changed).statusCode(303);
        as(shop.office()).get(plan).then().body(not(containsString("value=\"45,5\"")));
    }

    @Test
    void it_is_tried_on_a_home() {
        var shop = shops.open("CA-QC", "en");
        as(shop.owner())
                .header("Operation-Id", UUID.randomUUID())
                .contentType("text/csv")
                .body(FILE)
                .post(shop.api("imports/homes"))
                .then()
                .statusCode(200);
        String home = as(shop.owner()).get(shop.api("homes")).then().extract().path("[0].id");
        String plan = draft(shop);
        as(shop.office())
                .get(plan)
                .then()
                .statusCode(200)
                .body(containsString("9 Tannery Row"))
                .body(not(containsString("Visits needed")));
        as(shop.office())
                .queryParam("home", home)
                .get(plan)
                .then()
                .statusCode(200)
                .body(containsString("It keeps its promises"))
                .body(containsString("Visits needed"));
        var none = new HashMap<String, Object>(two(shop));
        none.put("version", "0");
        none.put("visits", "0");
        post(shop.office(), plan, none).statusCode(303);
        as(shop.office())
                .queryParam("home", home)
                .get(plan)
                .then()
                .statusCode(200)
                .body(containsString("What no visit keeps"));
        as(shop.office()).queryParam("home", UUID.randomUUID()).get(plan).then().statusCode(404);
    }

    @Test
    void a_plan_of_another_business_is_not_found() {
        var shop = shops.open("CA-ON", "en");
        var other = shops.open("CA-ON", "en");
        String foreign = draft(other).replace(other.slug(), shop.slug());
        as(shop.office()).get(foreign).then().statusCode(404);
        post(shop.office(), foreign + "/sale", Map.of("day", "2026-10-01")).statusCode(404);
    }

    private static String draft(AShop.Shop shop) {
        return post(shop.office(), shop.at("plans/new"), two(shop))
                .statusCode(303)
                .extract()
                .header("Location")
                .replaceAll("^https?://[^/]+|[?].*$", "");
    }

    private static Map<String, Object> two(AShop.Shop shop) {
        return Map.of(
                "code", "two",
                "nameEn", "Two turns",
                "nameFr", "Deux saisons",
                "visits", "2",
                "price", "389.00",
                "discountPercent", "15",
                "instalments", "1",
                "includedMinutes", "0",
                "tasks", tasks(shop));
    }

    private static String version(String plan, AShop.Shop shop) {
        return as(shop.office())
                .get(plan)
                .then()
                .extract()
                .asString()
                .replaceAll("(?s).*name=\"version\" value=\"(\\d+)\".*", "$1");
    }

    /** The technician's tasks of the drain. */
    private static List<String> tasks(AShop.Shop shop) {
        List<Map<String, Object>> all =
                as(shop.owner()).get(shop.api("tasks")).then().extract().path("");
        return all.stream()
                .filter(one ->
                        ((List<?>) one.get("kinds")).contains("condensate") && "technician".equals(one.get("who")))
                .limit(1)
                .map(one -> (String) one.get("code"))
                .toList();
    }
}
