package changeover.web.field;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.web.AShop;
import changeover.web.AShop.Shop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class FieldCallPagesTest {

    private static final LocalDate TODAY = LocalDate.now(ZoneId.of("America/Toronto"));

    @Inject
    AShop shops;

    private static Map<String, Object> typed(String how) {
        var fields = new HashMap<String, Object>();
        fields.put("made", UUID.randomUUID().toString());
        fields.put("caller", "Edda Marl");
        fields.put("phone", "555-0177");
        fields.put("day", TODAY.toString());
        fields.put("time", "00:00");
        fields.put("home", "");
        fields.put("street", "3 Lantern Court");
        fields.put("city", "Port Ambrose");
        fields.put("language", "en");
        fields.put("trouble", "no_heat");
        fields.put("heat", "no");
        fields.put("words", "Cold since midnight");
        fields.put("how", how);
        fields.put("why", "No heat, an old person");
        fields.put("minutes", "90");
        fields.put("starts", "23:15");
        return fields;
    }

    private static void onCall(Shop shop) {
        post(
                        shop.office(),
                        shop.at("shop/on-call"),
                        Map.of(
                                "person", shop.technician().toString(),
                                "from", TODAY.minusDays(1).toString(),
                                "last", TODAY.plusDays(1).toString()))
                .statusCode(303);
    }

    private static String take(Shop shop, Map<String, Object> fields) {
        return post(shop.technician(), shop.at("field/calls"), fields)
                .statusCode(303)
                .extract()
                .header("Location")
                .replaceFirst("^https?://[^/]*", "");
    }

    @Test
    void the_technician_on_call_takes_a_call_at_night_and_goes_there() {
        for (boolean french : List.of(false, true)) {
            var shop = shops.open("CA-QC", french ? "fr" : "en");
            String way = shop.at("field/calls/new");
            as(shop.technician()).get(way).then().statusCode(404);
            post(shop.technician(), shop.at("field/calls"), typed("visit")).statusCode(404);
            as(shop.technician()).get(shop.at("field")).then().body(not(containsString(way)));
            onCall(shop);
            as(shop.technician()).get(shop.at("field")).then().body(containsString(way));
            String page = as(shop.technician())
                    .get(way)
                    .then()
                    .statusCode(200)
                    .extract()
                    .asString();
            int life = page.indexOf(french ? "Tout le monde sort" : "Everybody leaves the home now");
            assertTrue(life > 0 && life < page.indexOf("name=\"risks\""));

            Map<String, Object> said = typed("visit");
            String visit = take(shop, said);
            assertEquals(visit, take(shop, said));
            as(shop.technician())
                    .get(visit)
                    .then()
                    .statusCode(200)
                    .body(containsString("3 Lantern Court"))
                    .body(containsString(french ? "la visite est à votre journée" : "the visit is on your day"));
            as(shop.technician()).get(shop.at("field")).then().body(containsString("23:15"));
            as(shop.office())
                    .get(shop.at("calls"))
                    .then()
                    .body(containsString("3 Lantern Court"))
                    .body(containsString("Mika Tarn"));
        }
    }

    @Test
    void advice_is_kept_and_what_is_left_waits_on_the_offices_list() {
        var shop = shops.open("CA-ON", "en");
        onCall(shop);
        String day = take(shop, typed("advice"));
        as(shop.technician()).get(day).then().body(containsString("kept with what you advised"));
        as(shop.office()).get(shop.at("calls")).then().body(containsString("No call waits for an answer."));
        Map<String, Object> left = typed("office");
        left.put("why", "");
        left.put("street", "4 Lantern Court");
        as(shop.technician()).get(take(shop, left)).then().body(containsString("the office finds it on its list"));
        as(shop.office())
                .get(shop.at("calls"))
                .then()
                .body(containsString("4 Lantern Court"))
                .body(not(containsString("No call waits for an answer.")));
    }

    @Test
    void homes_are_found_and_what_is_wrong_loses_nothing_typed() {
        var shop = shops.open("CA-ON", "en");
        onCall(shop);
        take(shop, typed("office"));
        Map<String, Object> looking = typed("visit");
        looking.put("do", "find");
        looking.put("q", "Lantern");
        String found = post(shop.technician(), shop.at("field/calls"), looking)
                .statusCode(200)
                .body(containsString("Edda Marl, 555-0177"))
                .body(containsString("Cold since midnight"))
                .extract()
                .asString();
        String home = found.replaceAll("(?s).*name=\"home\" value=\"([0-9a-f-]{36})\".*", "$1");
        Map<String, Object> wrong = typed("visit");
        wrong.put("home", home);
        wrong.put("risks", List.of("gas"));
        wrong.put("minutes", "none");
        wrong.put("why", "");
        post(shop.technician(), shop.at("field/calls"), wrong)
                .statusCode(422)
                .body(containsString("told-wrong"))
                .body(containsString("minutes-wrong"))
                .body(containsString("why-wrong"))
                .body(containsString("Cold since midnight"));
        wrong.put("told", "yes");
        wrong.put("minutes", "60");
        wrong.put("why", "Smell of gas; they are outside");
        as(shop.technician()).get(take(shop, wrong)).then().body(containsString("3 Lantern Court"));
        Map<String, Object> same = typed("visit");
        same.put("starts", "23:20");
        same.put("street", "5 Lantern Court");
        post(shop.technician(), shop.at("field/calls"), same).statusCode(422).body(containsString("5 Lantern Court"));
        as(shop.office()).get(shop.at("calls")).then().body(not(containsString("5 Lantern Court")));

        var other = shops.open("CA-ON", "en");
        onCall(other);
        Map<String, Object> theirs = typed("visit");
        theirs.put("home", home);
        post(other.technician(), other.at("field/calls"), theirs).statusCode(404);
        as(other.technician()).get(shop.at("field/calls/new")).then().statusCode(404);
    }

    @ParameterizedTest
    @CsvSource({
        "23:50, 2027-01-11T23:10, 2027-01-11T23:50",
        "00:20, 2027-01-11T23:50, 2027-01-12T00:20",
        "03:00, 2027-01-12T03:10, 2027-01-12T03:00",
        "08:00, 2027-01-12T19:59, 2027-01-12T08:00",
        "08:00, 2027-01-12T20:01, 2027-01-13T08:00"
    })
    void an_hour_said_at_night_is_the_soonest(LocalTime starts, LocalDateTime now, LocalDateTime there) {
        assertEquals(there, FieldCallPages.soonest(starts, now));
    }
}
