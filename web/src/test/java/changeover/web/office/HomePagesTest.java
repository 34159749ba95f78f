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
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class HomePagesTest {

    private static final Map<String, String> HOME = Map.of(
            "street", "9 Tannery Row",
            "city", "Port Ambrose",
            "region", "ON",
            "country", "CA",
            "propertyUse", "residential",
            "name", "Anselm Birk",
            "phone", "555-0142",
            "language", "en");

    @Inject
    AShop shops;

    @Test
    void an_empty_list_says_what_to_do_next() {
        var shop = shops.open("CA-ON", "en");
        as(shop.office()).get(shop.at("homes")).then().statusCode(200).body(containsString("Add a home"));
    }

    @Test
    void a_new_home_is_found_by_name_street_and_telephone() {
        var shop = shops.open("CA-ON", "en");
        post(shop.office(), shop.at("homes"), HOME).statusCode(303);
        for (String part : new String[] {"birk", "tannery", "5550142", "0142"}) {
            as(shop.office())
                    .queryParam("q", part)
                    .get(shop.at("homes"))
                    .then()
                    .statusCode(200)
                    .body(containsString("9 Tannery Row"));
        }
    }

    @Test
    void a_home_of_another_business_is_not_found() {
        var shop = shops.open("CA-ON", "en");
        var other = shops.open("CA-ON", "en");
        post(shop.office(), shop.at("homes"), HOME).statusCode(303);
        as(other.office())
                .queryParam("q", "tannery")
                .get(other.at("homes"))
                .then()
                .statusCode(200)
                .body(not(containsString("9 Tannery Row")));
    }

    @Test
    void hostile_text_comes_back_as_text() {
        var shop = shops.open("CA-ON", "en");
        var typed = new HashMap<>(HOME);
        typed.put("name", "<script>alert(1)</script>");
        typed.put("region", "");
        post(shop.office(), shop.at("homes"), typed)
                .statusCode(422)
                .body(containsString("&lt;script&gt;"))
                .body(not(containsString("<script>alert")));
    }
}
