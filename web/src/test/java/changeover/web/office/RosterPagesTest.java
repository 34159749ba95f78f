package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.calendar.Window;
import changeover.scheduling.dayplan.Rosters;
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
class RosterPagesTest {

    private static final LocalDate TODAY = LocalDate.now(ZoneId.of("America/Toronto"));

    @Inject
    AShop shops;

    @Inject
    Rosters rosters;

    @Test
    void the_hours_that_are_written_are_those_the_season_reckons_with() {
        var shop = shops.open("CA-QC", "fr");
        String path = roster(shop);
        as(shop.office()).get(path).then().statusCode(200).body(containsString("Lundi, de"));
        var fields = new HashMap<String, String>();
        fields.put("starts-2", "10:00");
        fields.put("ends-2", "14:30");
        fields.put("starts-6", "");
        fields.put("ends-6", "");
        post(shop.office(), path, fields).statusCode(303);
        as(shop.office()).get(path).then().body(containsString("14:30")).body(not(containsString("16:00")));
        fields.put("starts-2", "09:15");
        fields.put("seen", "1 08:00-16:00");
        post(shop.office(), path, fields)
                .statusCode(422)
                .body(containsString("09:15"))
                .body(containsString("value=\"2 10:00-14:30\""));
        LocalDate tuesday = LocalDate.of(2027, 2, 9);
        var hours = shops.in(
                shop, () -> rosters.of(new Window(tuesday, tuesday.plusDays(2))).on(shop.technician(), tuesday));
        assertEquals(LocalTime.of(14, 30), hours.orElseThrow().ends());
        assertTrue(shops.in(
                        shop,
                        () -> rosters.of(new Window(tuesday, tuesday.plusDays(2)))
                                .on(shop.technician(), tuesday.plusDays(1)))
                .isEmpty());
        as(shop.owner())
                .get(shop.at("changes/people/" + shop.technician()))
                .then()
                .body(containsString("mardi"));
    }

    @Test
    void bad_hours_are_said_at_their_field_and_stay_as_typed() {
        var shop = shops.open("CA-ON", "en");
        String path = roster(shop);
        post(shop.office(), path, Map.of("starts-1", "8:61", "ends-1", "16:00"))
                .statusCode(422)
                .body(containsString("8:61"))
                .body(containsString("starts-1-wrong"));
        post(shop.office(), path, Map.of("starts-1", "16:00", "ends-1", "08:00"))
                .statusCode(422)
                .body(containsString("ends-1-wrong"));
        post(shop.office(), path, Map.of("starts-3", "08:00"))
                .statusCode(422)
                .body(containsString("Write both hours"))
                .body(containsString("ends-3-wrong"));
        post(shop.office(), path, Map.of()).statusCode(422).body(containsString("at least one day"));
    }

    @Test
    void a_day_off_comes_and_goes() {
        var shop = shops.open("CA-ON", "en");
        String path = roster(shop);
        LocalDate day = TODAY.plusDays(20);
        post(shop.office(), path + "/days", Map.of("day", day.toString(), "why", ""))
                .statusCode(422)
                .body(containsString(day.toString()))
                .body(containsString("why-wrong"));
        post(shop.office(), path + "/days", Map.of("day", day.toString(), "why", "Moving house"))
                .statusCode(303);
        post(shop.office(), path + "/days", Map.of("day", day.toString(), "why", "Again"))
                .statusCode(422)
                .body(containsString("already off"));
        String page = as(shop.office())
                .get(path)
                .then()
                .body(containsString("Moving house"))
                .extract()
                .asString();
        String removal = page.replaceAll("(?s).*/days/([0-9a-f-]{36})/removal.*", "$1");
        String another = shop.at("shop/people/" + shop.office() + "/roster/days/" + removal + "/removal");
        post(shop.office(), another, Map.of()).statusCode(404);
        post(shop.office(), path + "/days/" + removal + "/removal", Map.of()).statusCode(303);
        as(shop.office()).get(path).then().body(not(containsString("Moving house")));
    }

    @Test
    void where_the_day_begins_is_written_on_the_edition_that_was_seen() {
        for (String language : List.of("en", "fr")) {
            boolean french = language.equals("fr");
            var shop = shops.open("CA-QC", language);
            String path = shop.at("shop/people/" + shop.technician() + "/crew/base");
            as(shop.office())
                    .get(roster(shop))
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "Journée nationale des patriotes" : "National Patriots"));
            var fields = new HashMap<>(Map.of(
                    "address",
                    "3 Tannery Row",
                    "latitude",
                    "95",
                    "longitude",
                    "-71,5",
                    "lunch",
                    "45",
                    "version",
                    "-1"));
            post(shop.office(), path, fields)
                    .statusCode(422)
                    .body(containsString("latitude-wrong"))
                    .body(containsString("3 Tannery Row"));
            fields.put("latitude", "46,25");
            post(shop.office(), path, fields).statusCode(303);
            as(shop.office())
                    .get(roster(shop))
                    .then()
                    .body(containsString("value=\"46.25\""))
                    .body(containsString("value=\"45\""));
            post(shop.office(), path, fields).statusCode(422);
            post(shop.office(), shop.at("shop/people/" + shop.office() + "/crew/base"), fields)
                    .statusCode(422)
                    .body(containsString(french ? "Seules les journées" : "Only a technician"));
        }
    }

    @Test
    void a_ticket_that_runs_out_stands_on_todays_page_until_a_new_card_is_held() {
        for (String language : List.of("en", "fr")) {
            boolean french = language.equals("fr");
            var shop = shops.open("CA-QC", language);
            String path = shop.at("shop/people/" + shop.technician() + "/crew/tickets");
            String soon = TODAY.plusDays(60).toString();
            var card = new HashMap<>(Map.of("kind", "gas", "number", "G-7", "expires", soon));
            post(shop.office(), path, card).statusCode(404);
            post(shop.owner(), path, card).statusCode(303);
            String heading = french ? "Permis qui expirent" : "Tickets that run out";
            as(shop.owner()).get(shop.at("today")).then().body(containsString(heading));
            as(shop.office())
                    .get(roster(shop))
                    .then()
                    .body(containsString("G-7"))
                    .body(containsString(french ? "Il expire bientôt." : "It runs out soon."));
            card.put("expires", TODAY.plusDays(61).toString());
            post(shop.owner(), path, card).statusCode(303);
            as(shop.owner()).get(shop.at("today")).then().body(not(containsString(heading)));
            card.put("expires", TODAY.minusDays(1).toString());
            post(shop.owner(), path, card).statusCode(303);
            as(shop.owner())
                    .get(shop.at("today"))
                    .then()
                    .body(containsString(heading))
                    .body(containsString(french ? "Il n’est plus valable." : "It holds no more."));
        }
    }

    @Test
    void only_who_works_here_has_hours_here() {
        var shop = shops.open("CA-ON", "en");
        var other = shops.open("CA-ON", "en");
        for (UUID nobody : List.of(other.technician(), UUID.randomUUID())) {
            String path = shop.at("shop/people/" + nobody + "/roster");
            as(shop.owner()).get(path).then().statusCode(404);
            post(shop.owner(), path, Map.of("starts-1", "08:00", "ends-1", "16:00"))
                    .statusCode(404);
        }
        as(shop.technician()).get(roster(shop)).then().statusCode(404);
    }

    private static String roster(AShop.Shop shop) {
        return shop.at("shop/people/" + shop.technician() + "/roster");
    }
}
