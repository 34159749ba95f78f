package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** The office offers a plan, writes the yes, gives a visit its day, ends what will not be. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class SellingTest {

    private static final String FILE = """
            home,customer,street,city,region,country,unit,kind,fits
            h,Anselm Birk,9 Tannery Row,Port Ambrose,QC,CA,Filter,filter-slot,size=16x25x4; thickness=4
            h,Anselm Birk,9 Tannery Row,Port Ambrose,QC,CA,Drain,condensate,
            """;

    @Inject
    AShop shops;

    @Test
    void from_the_offer_to_the_day_in_both_languages() {
        walk(shops.open("CA-QC", "fr"), "Écrire l’entente", "Vendu", "Acceptée");
        walk(shops.open("CA-QC", "en"), "Write the agreement", "Sold", "Accepted");
    }

    private void walk(AShop.Shop shop, String verb, String sold, String stamp) {
        LocalDate day = LocalDate.now(ZoneId.of("America/Toronto"));
        as(shop.owner())
                .header("Operation-Id", UUID.randomUUID())
                .contentType("text/csv")
                .body(FILE)
                .post(shop.api("imports/homes"))
                .then()
                .statusCode(200);
        String home = as(shop.owner()).get(shop.api("homes")).then().extract().path("[0].id");
        String plan = send(
                        shop.owner(),
                        shop.api("plans"),
                        Map.of(
                                "code", "two",
                                "nameEn", "Two turns",
                                "nameFr", "Deux saisons",
                                "visits", 2,
                                "price", "249.00",
                                "onSaleFrom", day.toString(),
                                "tasks", List.of(Map.of("task", task(shop, "condensate")))))
                .statusCode(201)
                .extract()
                .path("id");

        as(shop.office())
                .queryParam("plan", plan)
                .queryParam("from", day.toString())
                .get(shop.at("homes/" + home + "/offer"))
                .then()
                .statusCode(200)
                .body(containsString("249"));
        post(shop.office(), shop.at("homes/" + home + "/offer"), Map.of("plan", plan, "from", "31/12"))
                .statusCode(422)
                .body(containsString("31/12"));
        String agreement = post(
                        shop.office(),
                        shop.at("homes/" + home + "/offer"),
                        Map.of("plan", plan, "from", day.toString()))
                .statusCode(303)
                .extract()
                .header("Location")
                .replaceAll(".*/agreements/([^?]+).*", "$1");
        as(shop.office())
                .get(shop.at("agreements/" + agreement))
                .then()
                .statusCode(200)
                .body(containsString(verb));
        post(shop.office(), shop.at("agreements/" + agreement + "/acceptance"), yes(day, "home"))
                .statusCode(422)
                .body(containsString("Anselm Birk"));
        String next = post(shop.office(), shop.at("agreements/" + agreement + "/acceptance"), yes(day, "counter"))
                .statusCode(303)
                .extract()
                .header("Location");
        as(shop.office())
                .get(next)
                .then()
                .statusCode(200)
                .body(containsString(sold))
                .body(containsString(stamp));
        for (String page : List.of("agreements", "today", "season", "money", "season/" + day)) {
            as(shop.office()).get(shop.at(page)).then().statusCode(200);
        }
        visit(shop, home, day);
        post(shop.office(), shop.at("agreements/" + agreement + "/ending"), Map.of("day", day.toString(), "why", ""))
                .statusCode(422);
        post(
                        shop.office(),
                        shop.at("agreements/" + agreement + "/ending"),
                        Map.of("day", day.plusDays(1).toString(), "why", "moved away"))
                .statusCode(303);
    }

    /** Which task, between which days, by which rule, resting on what. */
    private static void saysWhy(AShop.Shop shop, String visit) {
        var task = as(shop.office())
                .get(shop.api("visits/" + visit))
                .then()
                .statusCode(200)
                .body("tasks[0].earliest", containsString("20"))
                .body("tasks[0].latest", containsString("20"))
                .extract();
        String reason = task.path("tasks[0].reason");
        String page = as(shop.office()).get(shop.at("visits/" + visit)).asString();
        assertTrue(page.contains(reason.substring(0, 12)), page);
        assertTrue(page.contains("It rests on: ") || page.contains("Cela repose sur\u00a0: "), page);
        assertTrue(page.contains("from ") || page.contains("du "), page);
    }

    private static void visit(AShop.Shop shop, String home, LocalDate day) {
        List<String> visits = as(shop.owner())
                .get(shop.api("homes/" + home + "/year"))
                .then()
                .extract()
                .path("visits.id");
        assertTrue(visits.size() >= 2);
        String visit = shop.at("visits/" + visits.getFirst());
        as(shop.office()).get(visit).then().statusCode(200).body(containsString("Mika Tarn"));
        saysWhy(shop, visits.getFirst());
        post(
                        shop.office(),
                        visit + "/appointment",
                        Map.of("technician", shop.technician().toString(), "day", day.toString(), "starts", "08:30"))
                .statusCode(303);
        as(shop.office()).get(shop.at("season/" + day)).then().statusCode(200).body(containsString("08:30"));
        post(
                        shop.office(),
                        shop.at("visits/" + visits.get(1) + "/appointment"),
                        Map.of("technician", shop.technician().toString(), "day", day.toString(), "starts", "08:30"))
                .statusCode(422);
        Map<String, String> filledBefore = Map.of(
                "technician", shop.technician().toString(), "day", day.toString(), "starts", "10:15", "seen", "");
        post(shop.office(), visit + "/appointment", filledBefore)
                .statusCode(422)
                .body(containsString("value=\"10:15\""))
                .body(containsString("value=\"" + day + " 08:30 " + shop.technician() + "\""));
        post(shop.office(), visit + "/appointment/removal", Map.of()).statusCode(303);
        post(shop.office(), visit + "/ending", Map.of("how", "no_access", "why", "nobody at home"))
                .statusCode(303);
        as(shop.office()).get(visit).then().statusCode(200).body(containsString("nobody at home"));
    }

    private static Map<String, String> yes(LocalDate day, String channel) {
        return Map.of("by", "Anselm Birk", "day", day.toString(), "channel", channel);
    }

    private static String task(AShop.Shop shop, String kind) {
        List<Map<String, Object>> all =
                as(shop.owner()).get(shop.api("tasks")).then().extract().path("");
        return (String) all.stream()
                .filter(one -> ((List<?>) one.get("kinds")).contains(kind) && "technician".equals(one.get("who")))
                .findFirst()
                .orElseThrow()
                .get("code");
    }
}
