package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;

import changeover.contracts.PostgresForTests;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The owner chooses how documents are numbered, and with which number a series begins. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class NumbersPagesTest {

    @Inject
    ABilledShop billed;

    @Test
    void a_series_names_the_fiscal_year_and_begins_where_the_owner_says() {
        for (String language : new String[] {"en", "fr"}) {
            var shop = billed.open("CA-QC", language);
            String at = shop.at("shop/numbers");
            as(shop.office())
                    .get(at)
                    .then()
                    .statusCode(200)
                    .body(containsString(language.equals("fr") ? "F-{year}-{number:4}" : "INV-{year}-{number:4}"));
            post(shop.owner(), at, Map.of("kind", "credit", "pattern", "C-{fiscal:13}-{number}", "number", ""))
                    .statusCode(422)
                    .body(containsString("C-{fiscal:13}-{number}"));
            post(shop.owner(), at, Map.of("kind", "credit", "pattern", "C-{fiscal:12}-{number:3}", "number", "41"))
                    .statusCode(303);
            as(shop.office()).get(at).then().body(containsString("-041"));
            post(shop.owner(), at, Map.of("kind", "credit", "pattern", "C-{fiscal:12}-{number:3}", "number", "9"))
                    .statusCode(422)
                    .body(containsString("value=\"9\""));
            String theirs = language.equals("fr") ? "F-{year}-{number:4}" : "INV-{year}-{number:4}";
            post(shop.owner(), at, Map.of("kind", "credit", "pattern", theirs, "number", ""))
                    .statusCode(422)
                    .body(containsString(language.equals("fr") ? "chacune leur série" : "series of their own"));
            post(shop.office(), at, Map.of("kind", "credit", "pattern", "{number}", "number", ""))
                    .statusCode(404);
        }
    }
}
