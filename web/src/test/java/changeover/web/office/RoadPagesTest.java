package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.PostgresForTests;
import changeover.scheduling.dayplan.TravelAtHand;
import changeover.scheduling.dayplan.routes.AsTheCrowFlies;
import changeover.scheduling.dayplan.routes.Travel;
import changeover.web.ALivedInHome;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class RoadPagesTest {

    private static final List<Travel.Place> TWO = List.of(new Travel.Place(46, -77), new Travel.Place(46.1, -77));

    @Inject
    AShop shops;

    @Inject
    ALivedInHome homes;

    @Inject
    TravelAtHand roads;

    @Test
    void a_business_sets_its_pace_and_sees_the_homes_on_no_map() {
        for (boolean french : List.of(false, true)) {
            var shop = shops.open("CA-QC", french ? "fr" : "en");
            UUID home = homes.machines(shop, french ? "fr" : "en").home();
            String page = shop.at("shop/roads");
            as(shop.office())
                    .get(page)
                    .then()
                    .statusCode(200)
                    .body(
                            containsString(shop.at("homes/" + home + "/edit")),
                            containsString(french ? "font 17 minutes" : "come to 17 minutes"));
            post(shop.office(), page, Map.of("detour", "160", "speed", "40")).statusCode(404);
            post(shop.owner(), page, Map.of("detour", "99", "speed", "fast"))
                    .statusCode(422)
                    .body(containsString("value=\"99\""), containsString("value=\"fast\""));
            post(shop.owner(), page, Map.of("detour", "160", "speed", "40")).statusCode(303);
            as(shop.owner())
                    .get(page)
                    .then()
                    .body(
                            containsString("value=\"160\""),
                            containsString("value=\"40\""),
                            containsString("24 minutes"));
            as(shop.office())
                    .get(shop.api("roads"))
                    .then()
                    .body("detourPercent", equalTo(160), "kmAnHour", equalTo(40), "homesOffTheMap", equalTo(1));
            assertEquals(
                    new AsTheCrowFlies(160, 40).between(TWO).seconds(0, 1),
                    shops.in(shop, () -> roads.travel().between(TWO).seconds(0, 1)));
            send(shop.owner(), shop.api("roads"), Map.of("detourPercent", 130, "kmAnHour", 45))
                    .statusCode(201);
            send(shop.owner(), shop.api("roads"), Map.of("detourPercent", 130, "kmAnHour", 131))
                    .statusCode(422);
        }
    }
}
