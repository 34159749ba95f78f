package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;

import changeover.contracts.PostgresForTests;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class OnCallPagesTest {

    private static final LocalDate TODAY = LocalDate.now(ZoneId.of("America/Toronto"));

    @Inject
    AShop shops;

    @Test
    void somebody_is_on_call_and_the_call_page_says_who() {
        for (boolean french : List.of(false, true)) {
            var shop = shops.open("CA-QC", french ? "fr" : "en");
            String path = shop.at("shop/on-call");
            as(shop.office())
                    .get(shop.at("calls/new"))
                    .then()
                    .body(containsString(french ? "Personne n’est de garde aujourd’hui." : "Nobody is on call today."));
            Map<String, String> week = Map.of(
                    "person", shop.technician().toString(),
                    "from", TODAY.toString(),
                    "last", TODAY.plusDays(6).toString());
            post(shop.office(), path, week).statusCode(303);
            as(shop.office())
                    .get(shop.at("calls/new"))
                    .then()
                    .body(containsString(
                            french ? "De garde aujourd’hui\u00a0: Mika Tarn" : "On call today: Mika Tarn"));
            post(shop.office(), path, week)
                    .statusCode(422)
                    .body(containsString(french ? "déjà de garde" : "on call on one of those days already"));
            String page =
                    as(shop.office()).get(path).then().statusCode(200).extract().asString();
            String removal = page.replaceAll("(?s).*(/shop/on-call/[0-9a-f-]{36}/removal).*", "$1");
            var other = shops.open("CA-QC", "en");
            post(other.office(), "/" + other.slug() + removal, Map.of()).statusCode(404);
            post(shop.office(), "/" + shop.slug() + removal, Map.of()).statusCode(303);
            as(shop.office()).get(path).then().body(not(containsString("/removal")));
            as(shop.owner())
                    .get(shop.at("changes/business"))
                    .then()
                    .body(containsString(french ? "garde" : "turn on call"));
        }
    }

    @Test
    void what_is_wrong_with_a_turn_is_said() {
        var shop = shops.open("CA-ON", "en");
        var other = shops.open("CA-ON", "en");
        String path = shop.at("shop/on-call");
        post(
                        shop.office(),
                        path,
                        Map.of(
                                "person", shop.technician().toString(),
                                "from", TODAY.toString(),
                                "last", TODAY.minusDays(1).toString()))
                .statusCode(422)
                .body(containsString("last-wrong"))
                .body(containsString(TODAY.minusDays(1).toString()));
        post(
                        shop.office(),
                        path,
                        Map.of(
                                "person", other.technician().toString(),
                                "from", TODAY.toString(),
                                "last", TODAY.toString()))
                .statusCode(422)
                .body(containsString("does not work here on all of those days"));
        as(shop.technician()).get(path).then().statusCode(404);
    }

    @Test
    void the_owner_writes_the_answer_times() {
        var shop = shops.open("CA-QC", "fr");
        String path = shop.at("shop/on-call");
        var hours = new HashMap<String, String>();
        for (String urgency : List.of("life", "urgent", "soon", "ordinary")) {
            hours.put(urgency + "-plan", "3");
            hours.put(urgency + "-none", "5");
        }
        hours.put("soon-none", "731");
        post(shop.owner(), path + "/answer-times", hours)
                .statusCode(422)
                .body(containsString("soon-none-wrong"))
                .body(containsString("731"));
        hours.put("soon-none", "17");
        post(shop.office(), path + "/answer-times", hours).statusCode(404);
        post(shop.owner(), path + "/answer-times", hours).statusCode(303);
        as(shop.office()).get(path).then().body(containsString("value=\"17\""));
    }
}
