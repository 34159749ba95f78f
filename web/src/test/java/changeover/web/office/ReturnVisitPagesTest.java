package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;

import changeover.contracts.PostgresForTests;
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

/** A free return answers a closed visit, costs nothing, and is counted by its cause. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class ReturnVisitPagesTest {

    private static final LocalDate TODAY = LocalDate.now(ZoneId.of("America/Toronto"));

    @Inject
    AShop shops;

    @Inject
    ALivedInHome homes;

    private static void close(Shop shop, String visit, int minutes) {
        send(
                        shop.office(),
                        shop.api("visits/" + visit.substring(visit.lastIndexOf('/') + 1) + "/closure"),
                        Map.of("minutes", minutes, "receivedBy", "Anselm Birk"))
                .statusCode(200);
    }

    @Test
    void a_return_answers_its_visit_and_is_counted() {
        for (boolean french : List.of(false, true)) {
            Shop shop = shops.open("CA-ON", french ? "fr" : "en");
            UUID home = homes.machines(shop, french ? "fr" : "en").home();
            String visit = shop.at("visits/" + OrderPagesTest.visit(shop, home));
            post(shop.office(), visit + "/returns", typed()).statusCode(422);
            close(shop, visit, 60);
            as(shop.office())
                    .get(visit)
                    .then()
                    .body(containsString(french ? "Y retourner sans frais" : "Go back without charge"));
            as(shop.office()).get(visit + "/returns").then().statusCode(200).body(containsString("Heat pump"));
            var wrong = typed();
            wrong.put("words", "");
            post(shop.office(), visit + "/returns", wrong).statusCode(422).body(containsString("value=\"45\""));
            String back = OrderPagesTest.location(post(shop.office(), visit + "/returns", typed()));
            as(shop.office())
                    .get(back)
                    .then()
                    .body(
                            containsString(visit),
                            containsString(french ? "répond à la visite" : "answers the visit"),
                            containsString("Again no heat"));
            as(shop.office()).get(visit).then().body(containsString(back));
            as(shop.owner())
                    .get(shop.at("shop/returns"))
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "Aucun retour sans frais" : "No free return"));
            close(shop, back, 35);
            as(shop.owner())
                    .get(shop.at("shop/returns"))
                    .then()
                    .statusCode(200)
                    .body(
                            containsString(french ? "Une visite sur 2" : "One of 2 visits"),
                            containsString(french ? "un réglage" : "a setting"),
                            containsString("Mika Tarn"));
            as(shop.office()).get(shop.at("shop/returns")).then().statusCode(404);
            as(shop.owner())
                    .get(shop.at("shop/returns?from=soon"))
                    .then()
                    .statusCode(422)
                    .body(containsString("value=\"soon\""));
            as(shop.owner())
                    .get(shop.api("return-visits"))
                    .then()
                    .body("[0].cause", equalTo("setting"))
                    .body("[0].minutes", equalTo(35));
            String id = visit.substring(visit.lastIndexOf('/') + 1);
            send(shop.office(), shop.api("visits/" + id + "/returns"), Map.of("cause", "part", "words", "It clicks"))
                    .statusCode(201)
                    .body("answers", equalTo(id));
            send(
                            shop.office(),
                            shop.api("visits/" + id + "/returns"),
                            Map.of("cause", "part", "words", "It clicks", "part", "no-such"))
                    .statusCode(422);
        }
    }

    private static Map<String, Object> typed() {
        return new HashMap<>(Map.of(
                "cause", "setting",
                "part", "",
                "equipment", "",
                "words", "Again no heat",
                "minutes", "45",
                "last", TODAY.plusDays(4).toString()));
    }
}
