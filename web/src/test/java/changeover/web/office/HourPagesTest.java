package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.PostgresForTests;
import changeover.contracts.calendar.Window;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Today;
import changeover.scheduling.dayplan.Appointment;
import changeover.scheduling.dayplan.Appointments;
import changeover.scheduling.dayplan.change.HoursTold;
import changeover.scheduling.visits.NewVisit;
import changeover.scheduling.visits.VisitKind;
import changeover.scheduling.visits.Visits;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** An hour is proposed, told and moved, and the visit, the day, the house card and the season say what became of it. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class HourPagesTest {

    @Inject
    AShop shops;

    @Inject
    Homes homes;

    @Inject
    Visits visits;

    @Inject
    Appointments appointments;

    @Inject
    HoursTold told;

    @Inject
    Today today;

    private UUID home(AShop.Shop shop) {
        return shops.in(
                shop,
                () -> homes.add(Home.Facts.at("9 Tannery Row", "Port Ambrose", "QC", null, "CA"))
                        .id());
    }

    private UUID given(AShop.Shop shop, UUID home, LocalDate day, int hour) {
        return shops.in(shop, () -> {
            UUID visit = visits.make(new NewVisit(
                            home, null, VisitKind.EXTRA, Window.ofDay(day), 60, null, "look at the drain", List.of()))
                    .id();
            appointments.give(visit, new Appointments.Slot(shop.technician(), day, LocalTime.of(hour, 0), null));
            return visit;
        });
    }

    private Appointment now(AShop.Shop shop, UUID visit) {
        return shops.in(shop, () -> appointments.of(visit)).orElseThrow();
    }

    private static void shows(AShop.Shop shop, String path, String... words) {
        var page = as(shop.office()).get(shop.at(path)).then().statusCode(200);
        for (String word : words) {
            page.body(containsString(word));
        }
    }

    @Test
    void a_told_hour_is_moved_with_who_asked_and_why_and_every_page_says_so() {
        for (String language : List.of("en", "fr")) {
            boolean french = language.equals("fr");
            var shop = shops.open("CA-QC", language);
            LocalDate day = shops.in(shop, () -> today.day()).plusDays(3);
            UUID home = home(shop);
            UUID visit = given(shop, home, day, 9);
            shows(shop, "visits/" + visit, french ? "proposée" : "proposed");
            post(shop.office(), shop.at("visits/" + visit + "/told"), Map.of()).statusCode(303);
            shows(
                    shop,
                    "visits/" + visit,
                    french ? "confirmée" : "confirmed",
                    french ? "le client s’est fait dire le " : "the customer was told ",
                    french ? "Pourquoi elle change" : "Why it moves");
            var move = Map.of(
                    "technician",
                    shop.technician().toString(),
                    "day",
                    day.plusDays(1).toString(),
                    "starts",
                    "10:00");
            post(shop.office(), shop.at("visits/" + visit + "/appointment"), move)
                    .statusCode(422)
                    .body(containsString(french ? "Dites pourquoi elle change" : "Say why it moves"));
            var said = new java.util.HashMap<String, String>(move);
            said.put("why", "Ils sont absents");
            post(shop.office(), shop.at("visits/" + visit + "/appointment"), said)
                    .statusCode(422)
                    .body(containsString("Ils sont absents"));
            said.put("asked", "customer");
            post(shop.office(), shop.at("visits/" + visit + "/appointment"), said)
                    .statusCode(303);
            assertEquals(LocalTime.of(10, 0), now(shop, visit).starts());
            String moved =
                    french ? "à la demande du client\u00a0: Ils sont absents" : "the customer asked: Ils sont absents";
            shows(shop, "visits/" + visit, "Basil Fenn", moved);
            shows(shop, "season/" + day.plusDays(1), moved, french ? "proposée" : "proposed");
            shows(shop, "homes/" + home, moved);
            post(shop.office(), shop.at("visits/" + visit + "/told"), Map.of()).statusCode(303);
            post(shop.office(), shop.at("visits/" + visit + "/appointment/removal"), Map.of())
                    .statusCode(422);
            post(
                            shop.office(),
                            shop.at("visits/" + visit + "/appointment/removal"),
                            Map.of("asked", "us", "why", "Une alerte de gaz"))
                    .statusCode(303);
            shows(
                    shop,
                    "visits/" + visit,
                    french ? "lui a été retiré, de notre fait" : "was taken off, by us",
                    "Une alerte de gaz");
        }
    }

    @Test
    void all_hours_of_a_day_are_told_in_one_press_or_one_alone() {
        for (String language : List.of("en", "fr")) {
            boolean french = language.equals("fr");
            var shop = shops.open("CA-QC", language);
            LocalDate day = shops.in(shop, () -> today.day()).plusDays(3);
            UUID home = home(shop);
            List<UUID> all = List.of(given(shop, home, day, 9), given(shop, home, day, 11), given(shop, home, day, 14));
            String path = shop.at("season/" + day + "/told");
            shows(shop, "season/" + day, french ? "Chacun s’est fait dire son heure" : "Everybody was told their hour");
            post(shop.office(), path, Map.of("visit", all.getFirst().toString()))
                    .statusCode(303);
            assertEquals(
                    List.of(true, false, false),
                    all.stream()
                            .map(one -> shops.in(shop, () -> told.isTold(one)))
                            .toList());
            post(shop.office(), path, Map.of("visit", UUID.randomUUID().toString()))
                    .statusCode(404);
            post(shop.office(), path, Map.of()).statusCode(303);
            assertEquals(
                    List.of(true, true, true),
                    all.stream()
                            .map(one -> shops.in(shop, () -> told.isTold(one)))
                            .toList());
            post(shop.office(), path, Map.of())
                    .statusCode(422)
                    .body(containsString(french ? "personne à prévenir" : "Nobody is left to tell"));
            as(shop.office())
                    .get(shop.at("season/" + day))
                    .then()
                    .body(not(containsString("/told")))
                    .body(containsString(french ? "confirmée" : "confirmed"));
            post(shop.technician(), path, Map.of()).statusCode(404);
        }
    }

    @Test
    void a_told_visit_is_fitted_into_another_day_for_a_reason_only() {
        var shop = shops.open("CA-QC", "en");
        LocalDate day = shops.in(
                shop,
                () -> today.day()
                        .plusDays(3)
                        .datesUntil(today.day().plusDays(60))
                        .filter(one -> one.getDayOfWeek() == java.time.DayOfWeek.WEDNESDAY)
                        .findFirst()
                        .orElseThrow());
        UUID visit = given(shop, home(shop), day, 9);
        post(shop.office(), shop.at("visits/" + visit + "/told"), Map.of()).statusCode(303);
        String path = shop.at("visits/" + visit + "/insertion");
        String page = as(shop.office())
                .get(path + "?day=" + day.plusDays(1))
                .then()
                .body(containsString("Why it moves"))
                .extract()
                .asString();
        String shown = page.replaceAll("(?s).*name=\"shown\" value=\"(\\d+)\".*", "$1");
        var way = Map.of("day", day.plusDays(1).toString(), "shown", shown);
        post(shop.office(), path, way).statusCode(422).body(containsString("Say why it moves"));
        var said = new java.util.HashMap<String, String>(way);
        said.put("asked", "us");
        said.put("why", "A gas alarm came first");
        post(shop.office(), path, said).statusCode(303);
        assertEquals(day.plusDays(1), now(shop, visit).day());
    }

    @Test
    void what_we_did_not_keep_stands_on_the_season_and_costs_nobody_a_fee() {
        for (String language : List.of("en", "fr")) {
            boolean french = language.equals("fr");
            var shop = shops.open("CA-QC", language);
            LocalDate day = shops.in(shop, () -> today.day());
            UUID home = home(shop);
            UUID visit = given(shop, home, day, 9);
            shows(shop, "season", french ? "Aucune visite n’a pris fin" : "No visit has ended in these weeks.");
            post(shop.office(), shop.at("visits/" + visit + "/told"), Map.of()).statusCode(303);
            post(
                            shop.office(),
                            shop.at("visits/" + visit + "/ending"),
                            Map.of("how", "not_kept", "why", "Le camion est tombé en panne"))
                    .statusCode(303);
            shows(
                    shop,
                    "season",
                    french ? "La seule visite n’a pas été faite" : "The one visit was not made as we had said.",
                    french ? "non tenue par nous" : "not kept by us",
                    "Le camion est tombé en panne",
                    "Basil Fenn");
            shows(shop, "homes/" + home, french ? "non tenue par nous" : "not kept by us", "tombé en panne");
            as(shop.office())
                    .get(shop.api("invoices"))
                    .then()
                    .statusCode(200)
                    .body(not(containsString(visit.toString())));
        }
    }
}
