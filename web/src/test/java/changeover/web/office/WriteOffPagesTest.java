package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.hasItem;
import static org.hamcrest.CoreMatchers.not;

import changeover.contracts.PostgresForTests;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A debt that is given up on its page and opened again, in both languages; the API says the same. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class WriteOffPagesTest {

    @Inject
    ABilledShop billed;

    private static String open(AShop.Shop shop) {
        return as(shop.owner())
                .get(shop.api("invoices"))
                .then()
                .statusCode(200)
                .extract()
                .path("find { it.number != null }.id");
    }

    @Test
    void what_is_open_is_given_up_and_opened_again() {
        for (String language : new String[] {"en", "fr"}) {
            var shop = billed.open("CA-QC", language);
            String today = today(shop);
            boolean french = language.equals("fr");
            String id = open(shop);
            String form = shop.at("money/invoices/" + id + "/write-off");
            String day = LocalDate.of(2026, 1, 5).toString();
            as(shop.office()).get(form).then().statusCode(200).body(containsString("name=\"why\""));
            post(shop.office(), form, Map.of("day", today, "amount", "1", "why", ""))
                    .statusCode(422)
                    .body(containsString("value=\"1\""));
            post(shop.office(), form, Map.of("day", day, "amount", "1", "why", "Moved away"))
                    .statusCode(422);
            post(shop.office(), form, Map.of("day", today, "amount", "", "why", "Moved away"))
                    .statusCode(303);
            as(shop.office())
                    .get(shop.at("money/invoices/" + id))
                    .then()
                    .body(containsString(french ? "Radiée" : "Written off"), not(containsString("/write-off\">Write")));
            String list = as(shop.office())
                    .get(shop.at("money/write-offs?from=" + day + "&until=" + today))
                    .then()
                    .statusCode(200)
                    .body(containsString("Moved away"), containsString("Basil Fenn"))
                    .extract()
                    .asString();
            String undoing = list.replaceAll("(?s).*?href=\"([^\"]*/undoing)\".*", "$1");
            as(shop.office()).get(undoing).then().statusCode(200);
            post(shop.office(), undoing, Map.of("day", today, "why", "They called"))
                    .statusCode(303);
            as(shop.office())
                    .get(form)
                    .then()
                    .body(containsString("They called"), containsString(french ? "Rouverte" : "Open again"));
        }
    }

    private static String today(AShop.Shop shop) {
        return as(shop.office())
                .get(shop.at("money/invoices/" + open(shop) + "/write-off"))
                .then()
                .extract()
                .asString()
                .replaceAll("(?s).*?name=\"day\"[^>]*value=\"([0-9-]{10})\".*", "$1");
    }

    @Test
    void the_api_gives_up_once_and_says_the_part_of_the_taxes() {
        var shop = billed.open("CA-QC", "en");
        String id = open(shop);
        send(shop.owner(), shop.api("invoices/" + id + "/write-offs"), Map.of("amount", "11.30", "why", "Gone"))
                .statusCode(201)
                .body("amount.amount", equalTo("11.30"))
                .body("why", equalTo("Gone"));
        send(shop.owner(), shop.api("invoices/" + id + "/write-offs"), Map.of("amount", "100000", "why", "Gone"))
                .statusCode(422)
                .body("refusals.field", hasItem("amount"));
        as(shop.owner())
                .get(shop.api("write-offs?from=2020-01-01"))
                .then()
                .statusCode(200)
                .body("size()", equalTo(1))
                .body("[0].invoice", equalTo(id));
    }
}
