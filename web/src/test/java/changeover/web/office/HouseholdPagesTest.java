package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.web.ALivedInHome;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class HouseholdPagesTest {

    private static final LocalDate TODAY = LocalDate.now(ZoneId.of("America/Toronto"));

    @Inject
    AShop shops;

    @Inject
    ALivedInHome homes;

    @Test
    void what_the_household_did_is_written_with_its_day_and_by_whom() {
        var shop = shops.open("CA-QC", "fr");
        String path = shop.at("homes/" + homes.sold(shop, "fr").home());
        String task = firstTask(as(shop.office()).get(path).then().extract().asString());
        post(shop.office(), path + "/household", Map.of("task", task, "by", "Odalys Bramhall", "day", TODAY.toString()))
                .statusCode(303);
        String page = as(shop.office())
                .get(path)
                .then()
                .body(containsString("Odalys Bramhall"))
                .extract()
                .asString();
        assertTrue(!page.contains("option value=\"" + task));
        as(shop.owner()).get(path + "/changes").then().body(containsString("fait par"));
    }

    @Test
    void what_is_wrong_is_said_at_its_field_and_stays_as_typed() {
        var shop = shops.open("CA-ON", "en");
        String path = shop.at("homes/" + homes.sold(shop, "en").home());
        String task = firstTask(as(shop.office()).get(path).then().extract().asString());
        String tomorrow = TODAY.plusDays(1).toString();
        post(shop.office(), path + "/household", Map.of("task", task, "by", "", "day", tomorrow))
                .statusCode(422)
                .body(containsString("by-wrong"))
                .body(containsString("not come yet"))
                .body(containsString(tomorrow));
        post(
                        shop.office(),
                        path + "/household",
                        Map.of("task", UUID.randomUUID().toString(), "by", "Odalys <b>", "day", TODAY.toString()))
                .statusCode(422)
                .body(containsString("no such task"))
                .body(containsString("Odalys &lt;b&gt;"));
        post(shop.office(), shop.at("homes/" + UUID.randomUUID() + "/household"), Map.of("task", task, "by", "A"))
                .statusCode(404);
    }

    private static String firstTask(String page) {
        var option = Pattern.compile("(?s)name=\"task\".*?<option value=\"([0-9a-f-]{36})\"")
                .matcher(page);
        assertTrue(option.find(), "no task of the household's own");
        return option.group(1);
    }
}
