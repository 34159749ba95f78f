package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.notices.Outbox;
import changeover.billing.notices.OutboxMessage;
import changeover.contracts.PostgresForTests;
import changeover.contracts.calendar.Holidays;
import changeover.contracts.calendar.Window;
import changeover.contracts.customers.Customer;
import changeover.contracts.customers.Customers;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.HomeParts;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Today;
import changeover.scheduling.dayplan.Appointment;
import changeover.scheduling.dayplan.Appointments;
import changeover.scheduling.dayplan.change.HoursTold;
import changeover.scheduling.dayplan.change.Rings;
import changeover.scheduling.visits.NewVisit;
import changeover.scheduling.visits.VisitKind;
import changeover.scheduling.visits.Visits;
import changeover.web.AShop;
import changeover.web.Shown;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** A storm day: no home is on a map, so every road is half an hour. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class WholeDayPagesTest {

    @Inject
    AShop shops;

    @Inject
    Homes homes;

    @Inject
    Customers customers;

    @Inject
    HomeParts parts;

    @Inject
    Visits visits;

    @Inject
    Appointments appointments;

    @Inject
    HoursTold told;

    @Inject
    Rings rings;

    @Inject
    Outbox outbox;

    @Inject
    Today today;

    private LocalDate tuesday(AShop.Shop shop) {
        return shops.in(
                shop,
                () -> today.day()
                        .plusDays(3)
                        .datesUntil(today.day().plusDays(60))
                        .filter(day -> day.getDayOfWeek() == DayOfWeek.TUESDAY
                                && !Holidays.isHoliday("CA-QC", day, Holidays.EasterDay.GOOD_FRIDAY)
                                && !Holidays.isHoliday("CA-QC", day.plusDays(1), Holidays.EasterDay.GOOD_FRIDAY))
                        .findFirst()
                        .orElseThrow());
    }

    private UUID customer(AShop.Shop shop, String language, String mail) {
        return shops.in(
                shop,
                () -> customers
                        .add(Customer.Facts.of("Mara Quill", language, "555-0142", mail))
                        .id());
    }

    private UUID given(AShop.Shop shop, UUID customer, LocalDate day, int hour, LocalDate last, boolean isTold) {
        return shops.in(shop, () -> {
            UUID home = homes.add(Home.Facts.at(hour + " Tannery Row", "Port Ambrose", "QC", null, "CA"))
                    .id();
            parts.beginAll(home, customer, day.minusDays(300));
            UUID visit = visits.make(new NewVisit(
                            home,
                            null,
                            VisitKind.EXTRA,
                            new Window(day.minusDays(9), last.plusDays(1)),
                            60,
                            null,
                            "look at the drain",
                            List.of()))
                    .id();
            appointments.give(visit, new Appointments.Slot(shop.technician(), day, LocalTime.of(hour, 0), null));
            if (isTold) {
                told.tell(visit);
            }
            return visit;
        });
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
    void a_storm_day_moves_with_one_message_a_customer_and_whoever_has_no_mail_is_rung() {
        for (String language : List.of("en", "fr")) {
            boolean french = language.equals("fr");
            var shop = shops.open("CA-QC", language);
            LocalDate day = tuesday(shop);
            UUID written = customer(shop, language, "mara@example.com");
            UUID rung = customer(shop, language, null);
            UUID first = given(shop, written, day, 8, day.plusDays(40), true);
            UUID second = given(shop, written, day, 10, day.plusDays(40), true);
            UUID third = given(shop, rung, day, 13, day, true);
            String path = shop.at("season/" + day + "/move");
            String page = as(shop.office())
                    .get(path)
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "Déplacer toute la journée" : "Move the whole day"))
                    .body(containsString(french ? "sa période se termine le" : "its window is over on"))
                    .extract()
                    .asString();
            Shown.keep("office-" + language + "-whole-day", page);
            assertEquals(day, now(shop, first).day(), "a look moves nothing");
            var fields = new HashMap<String, Object>(Map.of(
                    "shown",
                    "1",
                    "cause",
                    "storm",
                    "first",
                    day.plusDays(1).toString(),
                    "last",
                    day.plusDays(14).toString()));
            post(shop.office(), path, fields).statusCode(422);
            fields.put("shown", shown(page));
            post(shop.office(), path, fields).statusCode(303);
            for (UUID visit : List.of(first, second, third)) {
                assertEquals(day.plusDays(1), now(shop, visit).day());
            }
            assertTrue(shops.in(shop, () -> told.isTold(first)) && shops.in(shop, () -> told.isTold(second)));
            assertFalse(shops.in(shop, () -> told.isTold(third)), "whoever was not reached does not know it");
            List<OutboxMessage> messages = shops.in(shop, () -> outbox.to(written));
            assertEquals(1, messages.size());
            String body = messages.getFirst().body();
            assertTrue(body.contains(french ? "à cause de la tempête" : "because of the storm"), body);
            assertTrue(body.contains("8 Tannery Row") && body.contains("10 Tannery Row"), body);
            assertEquals(List.of(), shops.in(shop, () -> outbox.to(rung)));
            assertEquals(
                    List.of(third),
                    shops.in(shop, () -> rings.open()).stream()
                            .map(Rings.Ring::visit)
                            .toList());
            as(shop.office())
                    .get(path)
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "Ce qu’elles sont devenues" : "What became of it"))
                    .body(containsString(french ? "message écrit" : "written to"));
            as(shop.technician()).get(path).then().statusCode(404);
        }
    }

    @Test
    void the_api_shows_and_moves_a_day_and_refuses_what_is_not_as_shown() {
        var shop = shops.open("CA-QC", "en");
        LocalDate day = tuesday(shop);
        UUID untold = given(shop, customer(shop, "en", "mara@example.com"), day, 9, day, false);
        String path = shop.api("days/" + day + "/move");
        int shown = as(shop.office())
                .get(path + "?technician=" + shop.technician())
                .then()
                .statusCode(200)
                .body("visits[0].standing", equalTo("late"))
                .body("visits[0].told", equalTo(false))
                .extract()
                .path("shown");
        send(shop.office(), path, Map.of("shown", shown, "cause", "wind")).statusCode(422);
        send(shop.office(), path, Map.of("shown", shown ^ 1, "cause", "roads")).statusCode(422);
        send(shop.office(), path, Map.of("shown", shown, "cause", "roads"))
                .statusCode(200)
                .body("visits[0].day", equalTo(day.plusDays(1).toString()));
        assertEquals(day.plusDays(1), now(shop, untold).day());
        assertEquals(0, shops.in(shop, () -> rings.count()), "whoever was told nothing need not hear");
        send(shop.office(), path, Map.of("shown", shown, "cause", "roads")).statusCode(422);
    }
}
