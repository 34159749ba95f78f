package changeover.web.office;

import static changeover.web.AShop.as;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;

import changeover.contracts.PostgresForTests;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class EarnedPagesTest {

    @Inject
    AShop shops;

    @Inject
    ABilledShop billed;

    @Test
    void each_number_opens_what_it_is_the_sum_of_in_both_languages() {
        for (String language : new String[] {"en", "fr"}) {
            boolean french = language.equals("fr");
            var shop = billed.open("CA-QC", language);
            as(shop.office())
                    .get(shop.at("money/earned"))
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "Service encore dû" : "Owed as service"))
                    .body(containsString(french ? "jusqu’à 30 jours" : "up to 30 days"));
            for (String of : List.of("earned", "prepaid", "over", "ahead", "ended")) {
                as(shop.office())
                        .get(shop.at("money/earned/agreements?of=" + of))
                        .then()
                        .statusCode(200)
                        .body(not(containsString("NOT_FOUND")));
            }
            as(shop.office())
                    .get(shop.at("money/earned/agreements?of=earned"))
                    .then()
                    .body(containsString("Adèle Fournier-Blake"))
                    .body(containsString("/agreements/"))
                    .body(containsString("/homes/"));
            for (String age : List.of("?age=not-due", "?age=late-30", "?age=older", "")) {
                as(shop.office()).get(shop.at("money/earned/open" + age)).then().statusCode(200);
            }
            as(shop.office())
                    .get(shop.at("money"))
                    .then()
                    .body(containsString("money/earned"))
                    .body(containsString("money/tax-report"));
        }
    }

    @Test
    void a_day_long_gone_has_earned_nothing_and_a_word_is_no_day() {
        var shop = shops.open("CA-QC", "fr");
        as(shop.office())
                .get(shop.at("money/earned?day=2001-01-01"))
                .then()
                .statusCode(200)
                .body(containsString("value=\"2001-01-01\""))
                .body(containsString("0,00\u00a0$"));
        as(shop.office())
                .get(shop.at("money/earned?day=bientot"))
                .then()
                .statusCode(422)
                .body(containsString("bientot"));
        as(shop.office())
                .get(shop.at("money/earned/agreements?of=hidden"))
                .then()
                .statusCode(404);
        as(shop.office()).get(shop.at("money/earned/open?age=old")).then().statusCode(404);
        as(shop.technician()).get(shop.at("money/earned")).then().statusCode(404);
    }
}
