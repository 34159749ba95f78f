package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.PostgresForTests;
import changeover.contracts.catalogue.Catalogue;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Another plan in mid-term: seen first, offered, and with the yes the present agreement ends and is settled. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class PlanChangePagesTest {

    static final LocalDate DAY = LocalDate.now(ZoneId.of("America/Toronto"));

    @Inject
    ABilledShop billed;

    private static String another(AShop.Shop shop) {
        List<Map<String, String>> tasks = Catalogue.shipped().tasks().stream()
                .filter(task -> task.cadence().json().contains("each-season"))
                .map(task -> Map.of("task", task.code()))
                .toList();
        return send(
                        shop.owner(),
                        shop.api("plans"),
                        Map.of(
                                "code", "quiet",
                                "nameEn", "Quiet",
                                "nameFr", "Tranquille",
                                "visits", 2,
                                "price", "512.00",
                                "onSaleFrom", "2026-01-05",
                                "tasks", tasks))
                .statusCode(201)
                .extract()
                .path("id");
    }

    @Test
    void what_both_would_come_to_is_seen_first_and_the_yes_ends_the_present_one() {
        for (boolean french : new boolean[] {false, true}) {
            var shop = billed.open("CA-QC", french ? "fr" : "en");
            String home =
                    as(shop.owner()).get(shop.api("invoices")).then().extract().path("find { it.kind == 'plan' }.home");
            String old = as(shop.owner())
                    .get(shop.api("agreements?home=" + home))
                    .then()
                    .extract()
                    .path("[0].id");
            String quiet = another(shop);
            String at = shop.at("agreements/" + old + "/plan-change");
            LocalDate from = DAY.plusDays(10);
            as(shop.office())
                    .get(shop.at("agreements/" + old))
                    .then()
                    .body(containsString(french ? "Changer de formule" : "Change the plan"));
            as(shop.office())
                    .get(at)
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "Tranquille" : "Quiet"))
                    .body(not(containsString(french ? "Deux passages, 389" : "Two Turns, $389")));
            as(shop.office())
                    .get(at + "?plan=" + quiet + "&from=" + from)
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "512,00\u00a0$" : "$512.00"))
                    .body(containsString(french ? "À rendre, avant les taxes" : "To give back, before tax"));
            as(shop.office())
                    .get(at + "?plan=" + quiet + "&from=" + DAY.minusDays(1))
                    .then()
                    .body(containsString(french ? "à partir d’aujourd’hui" : "from today on"));
            post(
                            shop.office(),
                            at,
                            Map.of("plan", quiet, "from", DAY.plusYears(2).toString()))
                    .statusCode(422);
            String made = post(shop.office(), at, Map.of("plan", quiet, "from", from.toString()))
                    .statusCode(303)
                    .extract()
                    .header("Location")
                    .replaceAll(".*/agreements/([0-9a-f-]{36}).*", "$1");
            as(shop.office())
                    .get(shop.at("agreements/" + made))
                    .then()
                    .body(containsString(french ? "Elle prendrait la place de" : "It takes the place of"));
            post(shop.office(), at, Map.of("plan", quiet, "from", from.toString()))
                    .statusCode(422)
                    .body(containsString(french ? "Un changement est déjà offert" : "A change is offered already"));
            post(
                            shop.office(),
                            shop.at("agreements/" + made + "/acceptance"),
                            Map.of("by", "Adèle Fournier-Blake", "day", DAY.toString(), "channel", "counter"))
                    .statusCode(303);
            as(shop.office())
                    .get(shop.at("agreements/" + old))
                    .then()
                    .body(containsString(french ? "Changé pour Tranquille" : "Changed to Quiet"))
                    .body(containsString(shop.at("agreements/" + made)))
                    .body(containsString(french ? "À sa place" : "In its place"));
            as(shop.office())
                    .get(shop.at("agreements/" + made))
                    .then()
                    .body(containsString(shop.at("agreements/" + old + "/settlement")));
            as(shop.office())
                    .get(shop.at("agreements/" + old + "/settlement"))
                    .then()
                    .body(containsString(french ? "Elle a pris fin" : "It ended on"));
            send(
                            shop.owner(),
                            shop.api("agreements/" + old + "/plan-change"),
                            Map.of("plan", quiet, "from", from.toString()))
                    .statusCode(422);
            String first = as(shop.owner())
                    .get(shop.api("agreements/" + made))
                    .then()
                    .statusCode(200)
                    .extract()
                    .path("from");
            assertEquals(from.toString(), first);
        }
    }
}
