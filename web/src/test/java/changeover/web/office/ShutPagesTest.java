package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.hasItem;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.calendar.Window;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Today;
import changeover.scheduling.dayplan.SeasonPlan;
import changeover.scheduling.dayplan.SeasonPlans;
import changeover.scheduling.dayplan.change.FittingIn;
import changeover.scheduling.visits.NewVisit;
import changeover.scheduling.visits.VisitKind;
import changeover.scheduling.visits.Visits;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class ShutPagesTest {

    @Inject
    AShop shops;

    @Inject
    Homes homes;

    @Inject
    Visits visits;

    @Inject
    SeasonPlans plans;

    @Inject
    FittingIn fitting;

    @Inject
    Today today;

    private UUID home(AShop.Shop shop) {
        return shops.in(
                shop,
                () -> homes.add(Home.Facts.at("9 Tannery Row", "Port Ambrose", "QC", null, "CA"))
                        .id());
    }

    private UUID visit(AShop.Shop shop, UUID home, Window window) {
        return shops.in(
                shop,
                () -> visits.make(new NewVisit(
                                home, null, VisitKind.EXTRA, window, 60, null, "look at the drain", List.of()))
                        .id());
    }

    private LocalDate monday(AShop.Shop shop) {
        return shops.in(shop, () -> today.day().plusDays(60).with(TemporalAdjusters.next(DayOfWeek.MONDAY)));
    }

    @Test
    void plans_go_round_a_home_that_is_shut_and_everybody_who_books_reads_it() {
        for (String language : List.of("en", "fr")) {
            boolean french = language.equals("fr");
            var shop = shops.open("CA-QC", language);
            UUID home = home(shop);
            LocalDate monday = monday(shop);
            Window month = Window.ofDays(monday, monday.plusDays(27));
            UUID visit = visit(shop, home, month);
            UUID never = visit(shop, home, Window.ofDays(monday, monday.plusDays(4)));
            String path = shop.at("homes/" + home);
            post(shop.office(), path + "/shut", Map.of("from", monday.toString(), "until", monday.toString()))
                    .statusCode(422)
                    .body(containsString(french ? "Elle rouvre après" : "It opens again after"));
            post(
                            shop.office(),
                            path + "/shut",
                            Map.of(
                                    "from", monday.minusDays(5).toString(),
                                    "until", monday.plusDays(14).toString(),
                                    "heatOff", "yes",
                                    "waterDrained", "yes",
                                    "note", "The neighbour looks in"))
                    .statusCode(303);
            String sentence = french ? "chauffage coupé, eau vidangée" : "heat off, water drained";
            for (String page : List.of(path, path + "/shut", shop.at("visits/" + visit))) {
                as(shop.office()).get(page).then().statusCode(200).body(containsString(sentence));
            }
            as(shop.office())
                    .get(path + "/shut")
                    .then()
                    .body(containsString(french ? "il ne reste aucun jour" : "no day left"))
                    .body(containsString(never.toString()))
                    .body(not(containsString(visit.toString())));
            Map<UUID, LocalDate> given = shops.in(shop, () -> plans.suggest(month, today.day())).given().stream()
                    .collect(Collectors.toMap(SeasonPlan.Given::visit, SeasonPlan.Given::day));
            assertEquals(Map.of(visit, monday.plusDays(14)), given);
            assertTrue(shops.in(shop, () -> fitting.offers(visit, monday)).isEmpty());
            assertFalse(shops.in(shop, () -> fitting.offers(visit, monday.plusDays(14)))
                    .isEmpty());
            as(shop.office())
                    .get(shop.at("visits/" + visit + "/insertion?day=" + monday))
                    .then()
                    .body(containsString(french ? "La maison est fermée ce jour-là" : "The home is shut on this day"));
            post(
                            shop.office(),
                            shop.at("visits/" + visit + "/appointment"),
                            Map.of(
                                    "technician",
                                    shop.technician(),
                                    "day",
                                    monday.toString(),
                                    "starts",
                                    "09:00",
                                    "seen",
                                    ""))
                    .statusCode(303)
                    .header("Location", containsString("day-kept-shut"));
            as(shop.office()).get(shop.at("season/" + monday)).then().body(containsString(sentence));
            as(shop.technician()).get(shop.at("field?day=" + monday)).then().body(containsString(sentence));
            as(shop.office()).get(shop.api("days/" + monday)).then().body("stops.flatten().shut", hasItem(true));
            as(shop.office())
                    .get(path + "/shut")
                    .then()
                    .body(containsString(french ? "Donner un autre jour" : "Give another day"));
            as(shop.technician())
                    .get(shop.at("field/visits/" + visit))
                    .then()
                    .statusCode(200)
                    .body(containsString(sentence));
            as(shop.technician()).get(path + "/shut").then().statusCode(404);
        }
    }

    @Test
    void the_api_says_when_a_home_is_shut_and_when_it_opens() {
        var shop = shops.open("CA-QC", "en");
        UUID home = home(shop);
        LocalDate monday = monday(shop);
        String path = shop.api("homes/" + home + "/shut");
        String time = send(shop.office(), path, Map.of("from", monday.toString(), "heatOff", true))
                .statusCode(200)
                .body("times[0].heatOff", equalTo(true))
                .body("times[0].until", equalTo(null))
                .extract()
                .path("times[0].id");
        send(shop.office(), path, Map.of("from", monday.plusDays(90).toString()))
                .statusCode(422);
        send(
                        shop.office(),
                        path + "/" + time + "/opening",
                        Map.of("day", monday.plusDays(9).toString()))
                .statusCode(200)
                .body("times[0].until", equalTo(monday.plusDays(9).toString()));
        send(shop.office(), path, Map.of("from", monday.plusDays(90).toString()))
                .statusCode(200);
        String second = as(shop.office()).get(path).then().extract().path("times[1].id");
        send(shop.office(), path + "/" + second + "/opening", Map.of("day", monday.toString()))
                .statusCode(200)
                .body("times.size()", equalTo(1));
        send(shop.office(), path + "/" + UUID.randomUUID() + "/opening", Map.of("day", monday.toString()))
                .statusCode(404);
    }
}
