package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.hasItem;

import changeover.contracts.PostgresForTests;
import changeover.contracts.tenants.People;
import changeover.web.ALivedInHome;
import changeover.web.AShop;
import changeover.web.AShop.Shop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** The office adds what else has to be done and says which ticket is the right one; only that one then puts it back. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class StopCorrectionPagesTest {

    private static final LocalDate TODAY = LocalDate.now(ZoneId.of("America/Toronto"));

    @Inject
    AShop shops;

    @Inject
    ALivedInHome homes;

    @Inject
    People people;

    private String stopped(Shop shop, boolean french) {
        return OrderPagesTest.location(post(
                shop.office(),
                shop.at("homes/" + homes.machines(shop, french ? "fr" : "en").home() + "/stopped"),
                Map.of(
                        "made",
                        UUID.randomUUID().toString(),
                        "equipment",
                        "",
                        "seen",
                        "Soot over the door",
                        "shutOff",
                        "",
                        "ticket",
                        "gas")));
    }

    @Test
    void a_duty_is_added_with_what_it_rests_on() {
        for (boolean french : List.of(false, true)) {
            Shop shop = shops.open("CA-ON", french ? "fr" : "en");
            String stop = stopped(shop, french);
            as(shop.office())
                    .get(stop + "/correction")
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "Sur quoi cela repose" : "What it rests on"));
            var duty = new HashMap<String, Object>(Map.of(
                    "made",
                    UUID.randomUUID().toString(),
                    "words",
                    "Ring the landlord",
                    "source",
                    "",
                    "due",
                    TODAY.plusDays(2).toString(),
                    "whose",
                    "office"));
            post(shop.office(), stop + "/additions", duty).statusCode(422).body(containsString("Ring the landlord"));
            duty.put("source", "The lease, section 4");
            OrderPagesTest.location(post(shop.office(), stop + "/additions", duty));
            as(shop.office())
                    .get(stop)
                    .then()
                    .body(containsString("Ring the landlord"), containsString("The lease, section 4"));
            as(shop.office()).get(shop.at("stopped")).then().body(containsString("Ring the landlord"));
            String code = as(shop.office())
                    .get(stop)
                    .then()
                    .extract()
                    .asString()
                    .replaceAll("(?s).*<option value=\"([0-9a-f-]{36})\".*", "$1");
            OrderPagesTest.location(post(
                    shop.office(),
                    stop + "/duties",
                    Map.of("code", code, "who", "Odile", "day", TODAY.toString(), "words", "")));
            as(shop.office()).get(stop).then().body(containsString(french ? "fait par Odile" : "done by Odile"));
        }
    }

    @Test
    void another_ticket_is_asked_for_and_the_first_no_longer_puts_it_back() {
        for (boolean french : List.of(false, true)) {
            Shop shop = shops.open("CA-ON", french ? "fr" : "en");
            String stop = stopped(shop, french);
            String api = shop.api("stopped/" + stop.substring(stop.lastIndexOf('/') + 1));
            Map<String, String> done = Map.of("code", "distributor-told", "who", "Odile", "day", TODAY.toString());
            OrderPagesTest.location(post(shop.office(), stop + "/duties", done));
            post(shop.office(), stop + "/ticket", Map.of("ticket", "gas", "why", "It burns gas"))
                    .statusCode(422)
                    .body(containsString("It burns gas"));
            post(shop.office(), stop + "/ticket", Map.of("ticket", "electrical", "why", ""))
                    .statusCode(422);
            OrderPagesTest.location(
                    post(shop.office(), stop + "/ticket", Map.of("ticket", "electrical", "why", "It is a baseboard")));
            as(shop.office())
                    .get(stop)
                    .then()
                    .body(
                            containsString("It is a baseboard"),
                            containsString(french ? "fait par Odile" : "done by Odile"));
            shops.in(shop, () -> {
                people.hold(shop.owner(), "gas", "G-7", null);
                return true;
            });
            post(shop.owner(), stop + "/service", Map.of("how", "in_service", "done", "Relit it"))
                    .statusCode(422);
            send(shop.office(), api + "/additions", Map.of("words", "Ring", "source", "Lease", "due", TODAY.toString()))
                    .statusCode(200)
                    .body("duties.wordsEn", hasItem("Ring"));
            send(shop.office(), api + "/ticket", Map.of("ticket", "gas", "why", "It burns gas after all"))
                    .statusCode(200)
                    .body("ticket", equalTo("gas"), "corrections.size()", equalTo(2));
            OrderPagesTest.location(
                    post(shop.owner(), stop + "/service", Map.of("how", "in_service", "done", "Relit it")));
            post(shop.office(), stop + "/ticket", Map.of("ticket", "electrical", "why", "Too late"))
                    .statusCode(422);
        }
    }
}
