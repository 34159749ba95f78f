package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.not;

import changeover.contracts.PostgresForTests;
import changeover.contracts.customers.AccessCodes;
import changeover.contracts.tenants.Today;
import changeover.web.ALivedInHome;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class KeysBackTest {

    @Inject
    AShop shops;

    @Inject
    ALivedInHome homes;

    @Inject
    AccessCodes codes;

    @Inject
    Today today;

    @Test
    void a_key_that_went_back_is_kept_no_longer_and_stays_in_the_history() {
        var shop = shops.open("CA-ON", "fr");
        UUID home = homes.machines(shop, "fr").home();
        UUID code = shops.in(shop, () -> codes.list(home)).getFirst().id();
        String day = shops.in(shop, () -> today.day()).toString();
        String path = shop.at("homes/" + home + "/codes/" + code + "/return");
        post(shop.office(), path, Map.of("to", "", "day", day, "code", code.toString()))
                .statusCode(422);
        post(shop.office(), path, Map.of("to", "Adèle Fournier-Blake", "day", day))
                .statusCode(303);
        as(shop.office())
                .get(shop.at("homes/" + home + "/access"))
                .then()
                .body(containsString("à Adèle Fournier-Blake"))
                .body(not(containsString(code.toString())));
        as(shop.office())
                .get(shop.api("homes/" + home + "/keys"))
                .then()
                .statusCode(200)
                .body("kept.size()", equalTo(0))
                .body("givenBack[0].to", equalTo("Adèle Fournier-Blake"));
        post(shop.office(), path, Map.of("to", "Basil Orme", "day", day)).statusCode(404);
    }
}
