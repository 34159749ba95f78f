package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.calendar.OwnSeason;
import changeover.contracts.calendar.Seasons;
import changeover.contracts.calendar.Window;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Today;
import changeover.scheduling.dayplan.Rosters;
import changeover.scheduling.dayplan.SeasonPlans;
import changeover.scheduling.visits.NewVisit;
import changeover.scheduling.visits.VisitKind;
import changeover.scheduling.visits.Visits;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class SeasonDaysPagesTest {

    @Inject
    AShop shops;

    @Inject
    Homes homes;

    @Inject
    Visits visits;

    @Inject
    Seasons seasons;

    @Inject
    People people;

    @Inject
    Today today;

    @Inject
    SeasonPlans plans;

    @Inject
    Rosters rosters;

    @Inject
    EntityManager rows;

    @Test
    void what_would_be_given_is_said_first_and_given_on_a_yes() {
        for (String language : List.of("en", "fr")) {
            boolean french = language.equals("fr");
            var shop = shops.open("CA-QC", language);
            UUID season = waiting(shop, 3);
            String path = shop.at("season/days?season=" + season);
            String said = as(shop.office())
                    .get(path)
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "3 visites sur 3 reçoivent un jour" : "3 of 3 visits get a day"))
                    .body(containsString("Mika Tarn"))
                    .extract()
                    .asString();
            String shown = shown(said);
            Map<String, String> yes = Map.of("season", season.toString(), "shown", shown);
            shops.in(shop, () -> {
                LocalDate first = plans.suggest(opening(), today.day().plusDays(1))
                        .given()
                        .getFirst()
                        .day();
                rosters.takeOff(shop.technician(), first, "Training");
                return first;
            });
            String other = post(shop.office(), shop.at("season/days"), yes)
                    .statusCode(422)
                    .body(containsString(french ? "Quelque chose a changé" : "Something changed"))
                    .extract()
                    .asString();
            assertEquals(0, appointments(shop), "as many get a day, on other days than were shown");
            post(shop.office(), shop.at("season/days"), Map.of("season", season.toString(), "shown", shown(other)))
                    .statusCode(303);
            assertEquals(3, appointments(shop));
            as(shop.office())
                    .get(path)
                    .then()
                    .body(containsString(french ? "a déjà un jour" : "has a day already"))
                    .body(not(containsString("name=\"shown\"")));
        }
    }

    @Test
    void why_a_visit_gets_no_day_is_said() {
        var shop = shops.open("CA-ON", "en");
        UUID season = waiting(shop, 2);
        shops.in(shop, () -> {
            people.all().stream()
                    .filter(member -> member.personId().equals(shop.technician()))
                    .forEach(member -> member.end(LocalDate.now(ZoneId.of("America/Toronto"))));
            return 0;
        });
        as(shop.office())
                .get(shop.at("season/days?season=" + season))
                .then()
                .statusCode(200)
                .body(containsString("None of the 2 visits gets a day"))
                .body(not(containsString("name=\"shown\"")));
    }

    @Test
    void a_season_of_somebody_else_is_not_found_and_a_bad_one_is_said() {
        var shop = shops.open("CA-ON", "en");
        var other = shops.open("CA-ON", "en");
        String theirs = seasons(other).getFirst();
        as(shop.office()).get(shop.at("season/days?season=" + theirs)).then().statusCode(404);
        as(shop.office()).get(shop.at("season/days")).then().statusCode(200).body(containsString("has a day already"));
        for (String season : List.of(theirs, "", "x", UUID.randomUUID().toString())) {
            post(shop.office(), shop.at("season/days"), Map.of("season", season, "shown", "1"))
                    .statusCode(422);
        }
        as(shop.technician()).get(shop.at("season/days")).then().statusCode(404);
    }

    private static String shown(String page) {
        var found = Pattern.compile("name=\"shown\" value=\"(\\d+)\"").matcher(page);
        assertTrue(found.find(), page);
        return found.group(1);
    }

    private Window opening() {
        return seasons.all().stream()
                .filter(one -> one.season().code().equals("cooling"))
                .findFirst()
                .orElseThrow()
                .season()
                .openingAt(today.day().plusDays(20));
    }

    /** A season with so many visits that wait for a day. */
    private UUID waiting(AShop.Shop shop, int count) {
        return shops.in(shop, () -> {
            OwnSeason cooling = seasons.all().stream()
                    .filter(one -> one.season().code().equals("cooling"))
                    .findFirst()
                    .orElseThrow();
            Window opening = cooling.season().openingAt(today.day().plusDays(20));
            UUID home = homes.add(Home.Facts.at("9 Tannery Row", "Port Ambrose", "ON", null, "CA"))
                    .id();
            for (int at = 0; at < count; at++) {
                visits.make(new NewVisit(
                        home,
                        null,
                        VisitKind.EXTRA,
                        new Window(opening.until().minusDays(12), opening.until()),
                        60,
                        null,
                        "look at the drain",
                        List.of()));
            }
            return cooling.id();
        });
    }

    private List<String> seasons(AShop.Shop shop) {
        return shops.in(
                shop,
                () -> rows.createNativeQuery("select cast(id as text) from season order by position", String.class)
                        .getResultStream()
                        .map(String.class::cast)
                        .toList());
    }

    private long appointments(AShop.Shop shop) {
        return shops.in(shop, () -> (Long) rows.createNativeQuery("select count(*) from appointment", Long.class)
                .getSingleResult());
    }
}
