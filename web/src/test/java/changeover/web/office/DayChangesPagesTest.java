package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.calendar.Holidays;
import changeover.contracts.calendar.Window;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Role;
import changeover.contracts.tenants.Today;
import changeover.scheduling.dayplan.Appointment;
import changeover.scheduling.dayplan.Appointments;
import changeover.scheduling.visits.NewVisit;
import changeover.scheduling.visits.VisitKind;
import changeover.scheduling.visits.Visits;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** A day that changes; no home is on a map, so every road is half an hour. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class DayChangesPagesTest {

    @Inject
    AShop shops;

    @Inject
    Homes homes;

    @Inject
    Visits visits;

    @Inject
    Appointments appointments;

    @Inject
    People people;

    @Inject
    Today today;

    private LocalDate tuesday(AShop.Shop shop) {
        return shops.in(
                shop,
                () -> today.day()
                        .plusDays(3)
                        .datesUntil(today.day().plusDays(60))
                        .filter(day -> day.getDayOfWeek() == DayOfWeek.TUESDAY
                                && !Holidays.isHoliday("CA-QC", day, Holidays.EasterDay.GOOD_FRIDAY))
                        .findFirst()
                        .orElseThrow());
    }

    private UUID visit(AShop.Shop shop, LocalDate day) {
        return shops.in(shop, () -> {
            UUID home = homes.add(Home.Facts.at("9 Tannery Row", "Port Ambrose", "QC", null, "CA"))
                    .id();
            return visits.make(new NewVisit(
                            home, null, VisitKind.EXTRA, Window.ofDay(day), 60, null, "look at the drain", List.of()))
                    .id();
        });
    }

    private UUID given(AShop.Shop shop, LocalDate day, int hour) {
        UUID visit = visit(shop, day);
        shops.in(
                shop,
                () -> appointments.give(
                        visit, new Appointments.Slot(shop.technician(), day, LocalTime.of(hour, 0), null)));
        return visit;
    }

    private Appointment now(AShop.Shop shop, UUID visit) {
        return shops.in(shop, () -> appointments.of(visit)).orElseThrow();
    }

    private static String shown(String page) {
        var found = Pattern.compile("name=\"shown\" value=\"(\\d+)\"").matcher(page);
        assertTrue(found.find(), page);
        return found.group(1);
    }

    @Test
    void a_day_is_put_in_order_on_a_yes_and_a_told_hour_stays() {
        for (String language : List.of("en", "fr")) {
            boolean french = language.equals("fr");
            var shop = shops.open("CA-QC", language);
            LocalDate day = tuesday(shop);
            UUID told = given(shop, day, 14);
            UUID loose = given(shop, day, 11);
            post(shop.office(), shop.at("visits/" + told + "/told"), Map.of()).statusCode(303);
            as(shop.office())
                    .get(shop.at("visits/" + told))
                    .then()
                    .body(containsString(french ? "le client le sait" : "the customer was told"));
            String page = as(shop.office())
                    .get(shop.at("season/" + day + "/order"))
                    .then()
                    .statusCode(200)
                    .body(containsString("90 min"))
                    .body(containsString(french ? "reste" : "stays"))
                    .extract()
                    .asString();
            var yes = Map.of("technician", shop.technician().toString(), "shown", shown(page));
            post(
                            shop.office(),
                            shop.at("season/" + day + "/order"),
                            Map.of("technician", shop.technician().toString(), "shown", "1"))
                    .statusCode(422);
            post(shop.office(), shop.at("season/" + day + "/order"), yes).statusCode(303);
            assertEquals(LocalTime.of(14, 0), now(shop, told).starts());
            assertEquals(LocalTime.of(8, 30), now(shop, loose).starts());
            as(shop.office())
                    .get(shop.at("season/" + day + "/order"))
                    .then()
                    .body(not(containsString("name=\"shown\"")));
        }
    }

    @Test
    void an_urgent_visit_is_fitted_in_where_it_disturbs_least() {
        for (String language : List.of("en", "fr")) {
            boolean french = language.equals("fr");
            var shop = shops.open("CA-QC", language);
            LocalDate day = tuesday(shop);
            UUID told = given(shop, day, 9);
            given(shop, day, 11);
            post(shop.office(), shop.at("visits/" + told + "/told"), Map.of()).statusCode(303);
            UUID urgent = visit(shop, day);
            String path = shop.at("visits/" + urgent + "/insertion");
            String page = as(shop.office())
                    .get(path + "?day=" + day)
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "personne n’est déplacé" : "nobody is moved"))
                    .extract()
                    .asString();
            post(shop.office(), path, Map.of("day", day.toString(), "shown", "1"))
                    .statusCode(422);
            post(shop.office(), path, Map.of("day", day.toString(), "shown", shown(page)))
                    .statusCode(303);
            assertEquals(LocalTime.of(12, 30), now(shop, urgent).starts());
            assertEquals(LocalTime.of(9, 0), now(shop, told).starts());
            as(shop.office()).get(path + "?day=x").then().statusCode(404);
        }
    }

    @Test
    void the_day_of_somebody_ill_is_shared_out_and_whoever_must_hear_of_it_is_rung() {
        for (String language : List.of("en", "fr")) {
            boolean french = language.equals("fr");
            var shop = shops.open("CA-QC", language);
            LocalDate day = tuesday(shop);
            UUID nils = UUID.randomUUID();
            shops.in(
                    shop,
                    () -> people.add(Membership.begin(
                            nils, "Nils Ober", shop.slug() + "-n@example.com", language, Role.TECHNICIAN)));
            UUID told = given(shop, day, 9);
            UUID other = given(shop, day, 11);
            post(shop.office(), shop.at("visits/" + told + "/told"), Map.of()).statusCode(303);
            UUID theirs = visit(shop, day);
            shops.in(
                    shop,
                    () -> appointments.give(
                            theirs, new Appointments.Slot(nils, day, LocalTime.of(11, 0), LocalTime.of(15, 0))));
            String path = shop.at("season/" + day + "/absence/" + shop.technician());
            as(shop.office())
                    .get(path)
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "va à Nils Ober" : "goes to Nils Ober"))
                    .body(containsString(french ? "retourne à la saison" : "goes back to the season"));
            post(shop.office(), path, Map.of()).statusCode(303);
            assertEquals(nils, now(shop, told).technicianId());
            assertEquals(LocalTime.of(9, 0), now(shop, told).starts());
            assertTrue(shops.in(shop, () -> appointments.of(other)).isEmpty());
            String rings = as(shop.office())
                    .get(shop.at("season/rings"))
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "n’a plus de jour" : "has no day now"))
                    .extract()
                    .asString();
            as(shop.office())
                    .get(shop.at("season"))
                    .then()
                    .body(containsString(french ? "2 clients sont à appeler" : "2 customers must be rung"));
            String ring = rings.replaceAll("(?s).*/rings/([0-9a-f-]{36})/call.*", "$1");
            post(shop.office(), shop.at("season/rings/" + ring + "/call"), Map.of())
                    .statusCode(303);
            as(shop.office())
                    .get(shop.at("season"))
                    .then()
                    .body(containsString(french ? "Un client est à appeler" : "One customer must be rung"));
            post(shop.office(), shop.at("season/rings/" + UUID.randomUUID() + "/call"), Map.of())
                    .statusCode(404);
        }
    }
}
