package changeover.web.office;

import static changeover.web.AShop.as;
import static org.hamcrest.CoreMatchers.containsString;

import changeover.contracts.PostgresForTests;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class TodayPagesTest {

    @Inject
    AShop shops;

    @Test
    void an_empty_shop_is_told_what_comes_first_in_its_language() {
        var english = shops.open("CA-ON", "en");
        as(english.office()).get(english.at("today")).then().statusCode(200).body(containsString("Add the first home"));
        var french = shops.open("CA-QC", "fr");
        as(french.office())
                .get(french.at("today"))
                .then()
                .statusCode(200)
                .body(containsString("Ajoutez la première maison"));
    }
}
