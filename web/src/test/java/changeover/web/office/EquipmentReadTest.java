package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Equipment;
import changeover.scheduling.visits.Visits;
import changeover.web.AShop;
import changeover.web.Shown;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** A home that was sold unread: the office enters what was found, says so, and the year follows. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class EquipmentReadTest {

    private static final String FILE = """
            home,customer,phone,street,city,region,country,unit,kind,fits
            h,Anselm Birk,555-0131,9 Tannery Row,Port Ambrose,QC,CA,,,
            """;

    private final LocalDate day = LocalDate.now(ZoneId.of("America/Toronto"));

    @Inject
    AShop shops;

    @Inject
    AllEquipment equipment;

    @Inject
    Visits visits;

    @Test
    void the_office_reads_a_home_in_both_languages() {
        walk("en", "Still to be read", "Everything is read", "No machine stands in this home yet");
        walk("fr", "Restent à relever", "Tout est relevé", "Aucun appareil n’est encore inscrit");
    }

    private void walk(String language, String unread, String button, String none) {
        AShop.Shop shop = shops.open("CA-QC", language);
        UUID home = sold(shop);
        String card = shop.at("homes/" + home);
        as(shop.office()).get(shop.at("today")).then().body(not(containsString(unread)));
        List<String> planned = year(shop, home);
        shops.in(shop, () -> {
            visits.close(UUID.fromString(planned.getFirst()), day);
            return null;
        });
        String today = as(shop.office()).get(shop.at("today")).then().extract().asString();
        assertTrue(today.contains(unread), today);
        Shown.keep("today-unread-" + language, today);
        String before = as(shop.office()).get(card).then().extract().asString();
        assertTrue(before.contains(button), before);
        Shown.keep("card-unread-" + language, before);

        post(shop.office(), card + "/reading", Map.of()).statusCode(422).body(containsString(none));
        post(shop.office(), shop.at("homes/" + UUID.randomUUID() + "/reading"), Map.of())
                .statusCode(404);
        post(shop.office(), card + "/machines", Map.of("kind", "filter-slot", "name", "Filter", "fits.size", "16x25x4"))
                .statusCode(303);
        post(shop.office(), card + "/reading", Map.of()).statusCode(303);
        post(shop.office(), card + "/reading", Map.of()).statusCode(303);
        String after = as(shop.office())
                .get(shop.api("homes/" + home + "/year"))
                .then()
                .extract()
                .asString();
        assertTrue(after.contains("Filter"), after);
        assertEquals(planned, year(shop, home));
        as(shop.office()).get(card).then().body(not(containsString(button)));
        as(shop.office()).get(shop.at("today")).then().body(not(containsString(unread)));
        midTerm(shop, home, card);
    }

    private void midTerm(AShop.Shop shop, UUID home, String card) {
        post(shop.office(), card + "/machines", Map.of("kind", "condensate", "name", "Drain"))
                .statusCode(303);
        Equipment drain = shops.in(shop, () -> equipment.ofHome(home).getLast());
        String page = card + "/machines/" + drain.id();
        as(shop.office()).get(page).then().body(containsString(page + "/agreement"));
        post(shop.office(), page + "/agreement", Map.of()).statusCode(303);
        post(shop.office(), page + "/agreement", Map.of()).statusCode(303);
        as(shop.office()).get(page).then().body(not(containsString(page + "/agreement")));
        as(shop.office()).get(shop.api("homes/" + home + "/year")).then().body(containsString("Drain"));
    }

    private static List<String> year(AShop.Shop shop, UUID home) {
        return as(shop.owner())
                .get(shop.api("homes/" + home + "/year"))
                .then()
                .extract()
                .path("visits.id");
    }

    private UUID sold(AShop.Shop shop) {
        as(shop.owner())
                .header("Operation-Id", UUID.randomUUID())
                .contentType("text/csv")
                .body(FILE)
                .post(shop.api("imports/homes"))
                .then()
                .statusCode(200);
        String home = as(shop.owner()).get(shop.api("homes")).then().extract().path("[0].id");
        List<Map<String, Object>> all =
                as(shop.owner()).get(shop.api("tasks")).then().extract().path("");
        List<Map<String, String>> tasks = all.stream()
                .filter(task -> List.of("filter-slot", "condensate").stream()
                        .anyMatch(kind -> ((List<?>) task.get("kinds")).contains(kind)))
                .map(task -> Map.of("task", (String) task.get("code")))
                .toList();
        AShop.sold(shop, home, day, tasks);
        return UUID.fromString(home);
    }
}
