package changeover.web.api;

import static changeover.web.AShop.as;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.PostgresForTests;
import changeover.contracts.calendar.Window;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Role;
import changeover.scheduling.visits.NewVisit;
import changeover.scheduling.visits.VisitKind;
import changeover.scheduling.visits.Visits;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class SeasonPlanApiTest {

    static final int YEAR = LocalDate.now(ZoneId.of("America/Toronto")).getYear() + 1;
    static final Window SPRING = Window.ofDays(LocalDate.of(YEAR, 4, 20), LocalDate.of(YEAR, 5, 20));

    @Inject
    AShop shops;

    @Inject
    Homes homes;

    @Inject
    Visits visits;

    @Inject
    People people;

    private List<UUID> waiting(AShop.Shop shop, int count) {
        return shops.in(shop, () -> {
            UUID home = homes.add(Home.Facts.at("9 Tannery Row", "Port Ambrose", "ON", null, "CA"))
                    .id();
            return java.util.stream.IntStream.range(0, count)
                    .mapToObj(_ -> visits.make(new NewVisit(
                                    home, null, VisitKind.EXTRA, SPRING, 60, null, "look at the drain", List.of()))
                            .id())
                    .toList();
        });
    }

    private static String plan(AShop.Shop shop) {
        String id =
                as(shop.office()).get(shop.api("seasons")).then().extract().path("find { it.code == 'cooling' }.id");
        return shop.api("seasons/" + id + "/plan");
    }

    @Test
    void days_are_given_once_to_what_has_none_and_what_has_one_keeps_it() {
        var shop = shops.open("CA-ON", "en");
        List<UUID> going = waiting(shop, 4);
        LocalDate theirs = LocalDate.of(YEAR, 5, 12);
        send(
                        shop.office(),
                        shop.api("visits/" + going.getFirst() + "/appointment"),
                        Map.of("technician", shop.technician(), "day", theirs.toString(), "starts", "13:05"))
                .statusCode(200);
        shops.in(shop, () -> {
            visits.notKept(going.getLast(), theirs, "the crew was ill");
            return 0;
        });
        String path = plan(shop);
        as(shop.office())
                .get(path + "?year=" + YEAR)
                .then()
                .statusCode(200)
                .body("first", equalTo(YEAR + "-04-01"))
                .body("counts.unplaced", equalTo(2))
                .body("counts.placed", equalTo(1))
                .body("counts.not_kept", equalTo(1))
                .body("visits.find { it.state == 'not_kept' }.why", equalTo("the crew was ill"));
        List<String> days = Sending.twice(shop.office(), path, Map.of("year", YEAR))
                .statusCode(200)
                .body("given.size()", equalTo(2))
                .body("notPlaced.size()", equalTo(0))
                .body("counts.placed", equalTo(3))
                .extract()
                .path("given.starts");
        assertEquals(List.of("08:00:00", "09:30:00"), days);
        send(shop.office(), path, Map.of("year", YEAR)).statusCode(200).body("given.size()", equalTo(0));
        as(shop.office())
                .get(path + "?state=placed&year=" + YEAR)
                .then()
                .body("visits.find { it.visit == '" + going.getFirst() + "' }.day", equalTo(theirs.toString()));
    }

    @Test
    void what_needs_two_and_an_hour_gets_both_or_says_why_not() {
        var shop = shops.open("CA-ON", "en");
        UUID heavy = waiting(shop, 1).getFirst();
        Sending.put(
                        shop.office(),
                        shop.api("visits/" + heavy + "/needs"),
                        "\"0\"",
                        Map.of("people", 2, "earliest", "13:00", "latest", "14:00", "why", "A long ladder"))
                .statusCode(200);
        send(shop.office(), plan(shop), Map.of("year", YEAR))
                .statusCode(200)
                .body("given.size()", equalTo(0))
                .body("notPlaced[0].why", equalTo("no_second"));
        UUID nils = UUID.randomUUID();
        shops.in(
                shop,
                () -> people.add(
                        Membership.begin(nils, "Nils Ober", shop.slug() + "-n@example.com", "en", Role.TECHNICIAN)));
        send(shop.office(), plan(shop), Map.of("year", YEAR))
                .statusCode(200)
                .body("given[0].starts", equalTo("13:00:00"));
        String second = as(shop.office())
                .get(shop.api("visits/" + heavy + "/appointment"))
                .then()
                .extract()
                .path("second");
        String first = as(shop.office())
                .get(shop.api("visits/" + heavy + "/appointment"))
                .then()
                .extract()
                .path("technician");
        assertEquals(Set.of(nils.toString(), shop.technician().toString()), Set.of(first, second));
    }

    @Test
    void what_is_wrong_is_said_in_the_readers_language() {
        var english = shops.open("CA-ON", "en");
        send(english.office(), plan(english), Map.of("from", "spring"))
                .statusCode(422)
                .body("refusal", equalTo("Write a day as year-month-day: 2026-10-15."));
        as(english.office()).get(plan(english) + "?state=lost").then().statusCode(422);
        var french = shops.open("CA-QC", "fr");
        send(french.office(), plan(french), Map.of("années", YEAR))
                .statusCode(422)
                .body("refusals[0].code", equalTo("typed.unknown-member"));
    }

    @Test
    void another_businesses_season_is_not_found_and_a_technician_gives_no_days() {
        var shop = shops.open("CA-ON", "en");
        var other = shops.open("CA-ON", "en");
        String theirs = plan(other).replace(other.slug(), shop.slug());
        as(shop.office()).get(theirs).then().statusCode(404);
        send(shop.office(), theirs, Map.of("odd", 1)).statusCode(404);
        as(shop.technician()).get(plan(shop)).then().statusCode(404);
        send(shop.technician(), plan(shop), Map.of()).statusCode(404);
    }
}
