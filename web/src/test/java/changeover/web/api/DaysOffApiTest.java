package changeover.web.api;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.not;

import changeover.contracts.PostgresForTests;
import changeover.contracts.calendar.Window;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.scheduling.dayplan.Appointments;
import changeover.scheduling.visits.NewVisit;
import changeover.scheduling.visits.VisitKind;
import changeover.scheduling.visits.Visits;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class DaysOffApiTest {

    private static final LocalDate TODAY = LocalDate.now(ZoneId.of("America/Toronto"));

    @Inject
    AShop shops;

    @Inject
    Homes homes;

    @Inject
    Visits visits;

    @Inject
    Appointments appointments;

    private static String roster(AShop.Shop shop) {
        return shop.at("shop/people/" + shop.technician() + "/roster");
    }

    @Test
    void two_weeks_off_come_in_one_form_and_name_what_is_booked_then() {
        for (String language : List.of("en", "fr")) {
            boolean french = language.equals("fr");
            var shop = shops.open("CA-QC", language);
            String path = roster(shop);
            LocalDate first = TODAY.plusDays(20);
            UUID visit = shops.in(shop, () -> {
                UUID home = homes.add(Home.Facts.at("9 Tannery Row", "Port Ambrose", "QC", null, "CA"))
                        .id();
                UUID made = visits.make(new NewVisit(
                                home,
                                null,
                                VisitKind.EXTRA,
                                Window.ofDay(first.plusDays(3)),
                                60,
                                null,
                                "look at the drain",
                                List.of()))
                        .id();
                appointments.give(
                        made, new Appointments.Slot(shop.technician(), first.plusDays(3), LocalTime.of(9, 0), null));
                return made;
            });
            var fields = new HashMap<>(
                    Map.of("day", first.toString(), "last", first.minusDays(1).toString(), "why", "Lake house"));
            post(shop.office(), path + "/days", fields).statusCode(422).body(containsString("last-wrong"));
            fields.put("last", first.plusDays(400).toString());
            post(shop.office(), path + "/days", fields).statusCode(422).body(containsString("last-wrong"));
            fields.put("last", first.plusDays(13).toString());
            post(shop.office(), path + "/days", fields).statusCode(303);
            String page = as(shop.office())
                    .get(path)
                    .then()
                    .body(containsString(french ? "Partager cette journée" : "Share this day out"))
                    .body(containsString("/visits/" + visit))
                    .body(containsString("season/" + first.plusDays(3) + "/absence/" + shop.technician()))
                    .extract()
                    .asString();
            as(shop.office())
                    .get(shop.api("people/" + shop.technician() + "/days-off"))
                    .then()
                    .statusCode(200)
                    .body("days.size()", equalTo(14))
                    .body("booked[0].visit", equalTo(visit.toString()));
            String removal = page.replaceAll("(?s).*/days/([0-9a-f-]{36})/removal.*", "$1");
            post(
                            shop.office(),
                            path + "/days/" + removal + "/removal",
                            Map.of("last", first.plusDays(13).toString()))
                    .statusCode(303);
            as(shop.office()).get(path).then().body(not(containsString("Lake house")));
        }
    }

    @Test
    void a_program_writes_hours_and_days_off() {
        var shop = shops.open("CA-ON", "en");
        String hours = shop.api("people/" + shop.technician() + "/working-hours");
        String edition = as(shop.office())
                .get(hours)
                .then()
                .statusCode(200)
                .body("usual", equalTo(true))
                .extract()
                .header("ETag");
        var tuesday = Map.of("hours", List.of(Map.of("weekday", "tuesday", "starts", "10:00", "ends", "14:30")));
        Sending.put(shop.office(), hours, edition, tuesday)
                .statusCode(200)
                .body("hours[0].weekday", equalTo("tuesday"));
        Sending.put(shop.office(), hours, edition, tuesday).statusCode(422);
        String off = shop.api("people/" + shop.technician() + "/days-off");
        LocalDate first = TODAY.plusDays(5);
        String id = send(
                        shop.office(),
                        off,
                        Map.of(
                                "from",
                                first.toString(),
                                "last",
                                first.plusDays(1).toString(),
                                "why",
                                "A course"))
                .statusCode(200)
                .body("days.size()", equalTo(2))
                .extract()
                .path("days[0].id");
        send(shop.office(), off, Map.of("from", first.toString(), "why", "Again"))
                .statusCode(422);
        send(shop.office(), off + "/" + id + "/removal", Map.of())
                .statusCode(200)
                .body("days.size()", equalTo(1));
    }
}
