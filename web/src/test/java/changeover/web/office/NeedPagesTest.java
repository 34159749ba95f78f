package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.hasItem;

import changeover.contracts.PostgresForTests;
import changeover.contracts.calendar.Window;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.words.Wording;
import changeover.scheduling.visits.NewVisit;
import changeover.scheduling.visits.VisitKind;
import changeover.scheduling.visits.Visits;
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

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class NeedPagesTest {

    @Inject
    AShop shops;

    @Inject
    Homes homes;

    @Inject
    Visits visits;

    private UUID visit(AShop.Shop shop) {
        return shops.in(shop, () -> {
            UUID home = homes.add(Home.Facts.at("9 Tannery Row", "Port Ambrose", "ON", null, "CA"))
                    .id();
            return visits.make(new NewVisit(
                            home,
                            null,
                            VisitKind.EXTRA,
                            Window.ofDays(LocalDate.of(2027, 5, 3), LocalDate.of(2027, 5, 7)),
                            60,
                            null,
                            "look at the drain",
                            List.of(new NewVisit.NewTask(null, "filter-at-visit", new Wording("asked", "demandé")))))
                    .id();
        });
    }

    @Test
    void what_a_task_needs_and_what_was_written_by_hand_stand_together_on_the_visit() {
        for (String language : List.of("en", "fr")) {
            boolean french = language.equals("fr");
            var shop = shops.open("CA-QC", language);
            UUID visit = visit(shop);
            String page = shop.at("visits/" + visit);
            as(shop.office())
                    .get(page)
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "rien de plus qu’un technicien" : "nothing beyond one technician"));
            var task = new HashMap<>(Map.of("task", "filter-at-visit", "people", "2", "why", ""));
            post(shop.office(), shop.at("shop/needs"), task).statusCode(422).body(containsString("why-wrong"));
            task.put("why", "Very high up");
            post(shop.office(), shop.at("shop/needs"), task).statusCode(303);
            as(shop.office()).get(shop.at("shop/needs")).then().body(containsString("Very high up"));
            task.put("task", "no-such-task");
            post(shop.office(), shop.at("shop/needs"), task).statusCode(422);
            var hand = new HashMap<>(Map.of(
                    "people",
                    "1",
                    "ticket",
                    "gas",
                    "earliest",
                    "11:00",
                    "latest",
                    "09:00",
                    "why",
                    "School",
                    "version",
                    "-1"));
            post(shop.office(), page + "/needs", hand).statusCode(422).body(containsString("latest-wrong"));
            hand.put("latest", "14:00");
            post(shop.office(), page + "/needs", hand).statusCode(303);
            post(shop.office(), page + "/needs", hand).statusCode(422);
            as(shop.office())
                    .get(page)
                    .then()
                    .body(containsString(french ? "deux personnes, gaz" : "two people, gas"))
                    .body(containsString("11:00"))
                    .body(containsString(french ? "Qui accompagne" : "Who goes along"));
            as(shop.office())
                    .get(shop.api("visits/" + visit + "/needs"))
                    .then()
                    .statusCode(200)
                    .body("people", equalTo(2))
                    .body("tickets", hasItem("gas"))
                    .body("latest", equalTo("14:00:00"));
            post(
                            shop.office(),
                            page + "/appointment",
                            Map.of(
                                    "technician",
                                    shop.technician().toString(),
                                    "second",
                                    shop.technician().toString(),
                                    "day",
                                    "2027-05-04",
                                    "starts",
                                    "11:00"))
                    .statusCode(422)
                    .body(containsString("second-wrong"));
            post(
                            shop.office(),
                            page + "/appointment",
                            Map.of(
                                    "technician",
                                    shop.technician().toString(),
                                    "second",
                                    shop.office().toString(),
                                    "day",
                                    "2027-05-04",
                                    "starts",
                                    "11:00"))
                    .statusCode(303);
            as(shop.office()).get(page).then().body(containsString(french ? "avec Basil Fenn" : "with Basil Fenn"));
        }
    }
}
