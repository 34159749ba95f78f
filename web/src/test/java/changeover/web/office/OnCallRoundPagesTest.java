package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.PostgresForTests;
import changeover.web.AShop;
import changeover.web.Shown;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Turns on call that go round, laid on the page and over the API, and the name that calls then say. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class OnCallRoundPagesTest {

    private static final LocalDate TODAY = LocalDate.now(ZoneId.of("America/Toronto"));

    @Inject
    AShop shops;

    @Test
    void turns_go_round_and_calls_say_whose_it_is() {
        for (boolean french : java.util.List.of(false, true)) {
            var shop = shops.open("CA-QC", french ? "fr" : "en");
            String path = shop.at("shop/on-call-rounds");
            as(shop.office())
                    .get(path)
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "De garde à tour de rôle" : "On call in turns"))
                    .body(containsString("Mika Tarn"));
            post(
                            shop.office(),
                            path,
                            Map.of(
                                    "order1", shop.technician().toString(),
                                    "order2", shop.owner().toString(),
                                    "span", "day",
                                    "from", TODAY.toString(),
                                    "last", TODAY.plusDays(3).toString()))
                    .statusCode(303);
            Shown.keep(
                    "on-call-round-" + (french ? "fr" : "en"),
                    as(shop.office()).get(path).then().extract().asString());
            String turns = as(shop.office())
                    .get(shop.at("shop/on-call"))
                    .then()
                    .extract()
                    .asString();
            assertEquals(4, turns.split("/removal\"", -1).length - 1);
            as(shop.office())
                    .get(shop.at("calls/new"))
                    .then()
                    .body(containsString(
                            french ? "De garde aujourd’hui\u00a0: Mika Tarn" : "On call today: Mika Tarn"));
            post(
                            shop.office(),
                            path,
                            Map.of(
                                    "order1", shop.technician().toString(),
                                    "span", "week",
                                    "from", TODAY.toString(),
                                    "last", TODAY.plusDays(3).toString()))
                    .statusCode(422)
                    .body(containsString(french ? "déjà de garde" : "has somebody on call already"));
        }
    }

    @Test
    void what_is_wrong_is_said_at_its_field() {
        var shop = shops.open("CA-ON", "en");
        var other = shops.open("CA-ON", "en");
        post(
                        shop.office(),
                        shop.at("shop/on-call-rounds"),
                        Map.of(
                                "order1", java.util.UUID.randomUUID().toString(),
                                "span", "week",
                                "from", TODAY.toString(),
                                "last", TODAY.plusDays(30).toString()))
                .statusCode(422)
                .body(containsString("does not work here"));
        post(
                        shop.office(),
                        shop.at("shop/on-call-rounds"),
                        Map.of(
                                "order1", shop.technician().toString(),
                                "span", "week",
                                "from", TODAY.toString(),
                                "last", TODAY.plusDays(600).toString()))
                .statusCode(422)
                .body(containsString("for a year at most"));
        as(other.office()).get(other.at("shop/on-call")).then().statusCode(200);
    }
}
