package changeover.web.api;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.calendar.Holidays;
import changeover.contracts.calendar.Seasons;
import changeover.contracts.calendar.Window;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Role;
import changeover.contracts.tenants.Today;
import changeover.scheduling.dayplan.season.SeasonWork;
import changeover.scheduling.visits.NewVisit;
import changeover.scheduling.visits.VisitKind;
import changeover.scheduling.visits.Visits;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class SeasonRunsApiTest {

    /** A Tuesday and the Wednesday after it, neither a holiday, in a season that is open then. */
    private record Days(UUID season, LocalDate tuesday) {}

    @Inject
    AShop shops;

    @Inject
    Homes homes;

    @Inject
    Visits visits;

    @Inject
    People people;

    @Inject
    SeasonWork work;

    @Inject
    Seasons seasons;

    @Inject
    Today today;

    private record Waiting(UUID season, LocalDate tuesday, UUID second, List<UUID> visits) {}

    private Days days(String place) {
        LocalDate soon = today.day().plusDays(8);
        return soon.datesUntil(soon.plusYears(1))
                .filter(day -> day.getDayOfWeek() == DayOfWeek.TUESDAY)
                .filter(day -> !Holidays.isHoliday(place, day, Holidays.EasterDay.GOOD_FRIDAY)
                        && !Holidays.isHoliday(place, day.plusDays(1), Holidays.EasterDay.GOOD_FRIDAY))
                .flatMap(day -> seasons.all().stream()
                        .filter(one -> one.season().changeover() != null)
                        .filter(one -> {
                            Window open = one.season().openingAt(today.day());
                            return open.contains(day) && open.contains(day.plusDays(1));
                        })
                        .map(one -> new Days(one.id(), day)))
                .findFirst()
                .orElseThrow();
    }

    private Waiting waiting(AShop.Shop shop, String place) {
        return shops.in(shop, () -> {
            Days days = days(place);
            UUID second = UUID.randomUUID();
            people.add(Membership.begin(second, "Nils Ober", shop.slug() + "-n@example.com", "en", Role.TECHNICIAN));
            UUID home = homes.add(Home.Facts.at("9 Tannery Row", "Port Ambrose", "ON", null, "CA"))
                    .id();
            return new Waiting(
                    days.season(),
                    days.tuesday(),
                    second,
                    IntStream.range(0, 8)
                            .mapToObj(_ -> visits.make(new NewVisit(
                                            home,
                                            null,
                                            VisitKind.EXTRA,
                                            Window.ofDays(
                                                    days.tuesday(),
                                                    days.tuesday().plusDays(1)),
                                            180,
                                            null,
                                            "look at the drain",
                                            List.of()))
                                    .id())
                            .toList());
        });
    }

    private static String season(AShop.Shop shop) {
        return as(shop.office()).get(shop.api("seasons")).then().extract().path("find { it.code == 'cooling' }.id");
    }

    private void search(AShop.Shop shop) {
        int turns = 0;
        while (work.turn(shop.tenant())) {
            turns++;
        }
        assertTrue(turns > 0);
    }

    @Test
    void a_season_with_one_technician_taken_away_names_what_cannot_be_kept_and_the_days_that_would() {
        var shop = shops.open("CA-ON", "en");
        Waiting waiting = waiting(shop, "CA-ON");
        String path = shop.api("seasons/" + waiting.season() + "/plan-runs");
        String run = Sending.twice(shop.office(), path, Map.of("without", List.of(waiting.second())))
                .statusCode(201)
                .body("state", equalTo("running"))
                .body("waiting", equalTo(8))
                .extract()
                .path("id");
        send(shop.office(), path, Map.of()).statusCode(422);
        search(shop);
        as(shop.office())
                .get(path + "/" + run)
                .then()
                .statusCode(200)
                .body("state", equalTo("done"))
                .body("allKept", equalTo(false))
                .body("kept.size()", equalTo(4))
                .body("unkept.size()", equalTo(4))
                .body("unkept[0].why", equalTo("no_hours"))
                .body("unkept[0].last", equalTo(waiting.tuesday().plusDays(1).toString()))
                .body("technicianDays", equalTo(2))
                .body("moreDays[0].visits.size()", equalTo(2));
        String whole =
                send(shop.office(), path, Map.of()).statusCode(201).extract().path("id");
        search(shop);
        as(shop.office()).get(path + "/" + whole).then().body("allKept", equalTo(true));
        send(
                        shop.office(),
                        path + "/" + whole + "/acceptance",
                        Map.of("visits", List.of(waiting.visits().getFirst())))
                .statusCode(200)
                .body("given", equalTo(1));
        Sending.twice(shop.office(), path + "/" + whole + "/acceptance", Map.of())
                .statusCode(200)
                .body("given", equalTo(7));
        as(shop.office()).get(path).then().body("size()", equalTo(2)).body("accepted", equalTo(List.of(8, 0)));
    }

    @Test
    void what_is_wrong_is_said_and_anothers_season_is_not_found() {
        var shop = shops.open("CA-ON", "en");
        var other = shops.open("CA-ON", "en");
        String path = shop.api("seasons/" + season(shop) + "/plan-runs");
        send(shop.office(), path, Map.of()).statusCode(422).body("refusal", containsString("No visit of this season"));
        send(shop.office(), path, Map.of("idle", List.of("someday"))).statusCode(422);
        send(shop.office(), path, Map.of("without", List.of(shop.office()))).statusCode(422);
        send(shop.office(), shop.api("seasons/" + season(other) + "/plan-runs"), Map.of())
                .statusCode(404);
        as(shop.office()).get(path + "/" + UUID.randomUUID()).then().statusCode(404);
        send(shop.technician(), path, Map.of()).statusCode(404);
    }

    @Test
    void the_pages_ask_answer_and_give_in_both_languages() {
        for (String language : List.of("en", "fr")) {
            boolean french = language.equals("fr");
            var shop = shops.open("CA-QC", language);
            Waiting waiting = waiting(shop, "CA-QC");
            String pages = shop.at("season/plans");
            as(shop.office()).get(pages).then().statusCode(200).body(containsString("Nils Ober"));
            var fields = new HashMap<>(Map.of(
                    "season",
                    waiting.season().toString(),
                    "from",
                    "x",
                    "without",
                    waiting.second().toString(),
                    "more",
                    "0"));
            post(shop.office(), pages, fields).statusCode(422).body(containsString("from-wrong"));
            fields.put("from", waiting.tuesday().minusDays(3).toString());
            String at =
                    post(shop.office(), pages, fields).statusCode(303).extract().header("Location");
            String path = at.substring(at.indexOf("/" + shop.slug()));
            as(shop.office())
                    .get(path)
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "Cela continue tout seul" : "It goes on by itself"));
            search(shop);
            as(shop.office())
                    .get(path)
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "4 visites sur 8" : "4 of 8 visits find no day"))
                    .body(containsString(french ? "2 jours-technicien de plus" : "2 technician-days more"))
                    .body(containsString("Mika Tarn"));
            post(
                            shop.office(),
                            path + "/acceptance",
                            Map.of("week", waiting.tuesday().toString(), "some", "yes"))
                    .statusCode(422);
            post(
                            shop.office(),
                            path + "/acceptance",
                            Map.of("week", waiting.tuesday().toString()))
                    .statusCode(303);
            as(shop.office())
                    .get(path + "?week=" + waiting.tuesday())
                    .then()
                    .body(containsString(french ? "a son jour" : "has its day"))
                    .body(not(containsString("name=\"visit\"")));
            as(shop.office()).get(path + "?week=x").then().statusCode(404);
        }
    }
}
