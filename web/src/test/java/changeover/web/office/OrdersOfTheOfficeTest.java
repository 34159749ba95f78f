package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;

import changeover.contracts.PostgresForTests;
import changeover.web.ALivedInHome;
import changeover.web.AShop;
import changeover.web.AShop.Shop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** The office orders, hears another day and gives up what does not come. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class OrdersOfTheOfficeTest {

    @Inject
    AShop shops;

    @Inject
    ALivedInHome homes;

    @Test
    void the_office_orders_and_gives_up() {
        LocalDate today = LocalDate.now(ZoneId.of("America/Toronto"));
        Shop shop = shops.open("CA-ON", "en");
        UUID home = homes.machines(shop, "en").home();
        String visit = shop.at("visits/" + OrderPagesTest.visit(shop, home));
        as(shop.office()).get(visit + "/orders").then().statusCode(200).body(containsString("Heat pump"));
        var fields = OrderPagesTest.typed();
        fields.put("expected", "soon");
        post(shop.office(), visit + "/orders", fields).statusCode(422).body(containsString("value=\"soon\""));
        fields.put("expected", today.plusDays(2).toString());
        fields.put("supplier", "Tannery Supply");
        String order = OrderPagesTest.location(post(shop.office(), visit + "/orders", fields));
        OrderPagesTest.location(post(
                shop.office(),
                order + "/promise",
                Map.of("expected", today.plusDays(9).toString(), "version", "0")));
        post(
                        shop.office(),
                        order + "/promise",
                        Map.of("expected", today.plusDays(9).toString(), "version", "0"))
                .statusCode(422);
        post(shop.office(), order + "/ending", Map.of("endWhy", "")).statusCode(422);
        OrderPagesTest.location(post(shop.office(), order + "/ending", Map.of("endWhy", "No longer made")));
        as(shop.office()).get(order).then().body(containsString("No longer made"), containsString("not coming"));
        as(shop.owner())
                .get(shop.at("changes/" + visit.substring(visit.indexOf("visits/"))))
                .then()
                .statusCode(200)
                .body(containsString("expected on"));
    }
}
