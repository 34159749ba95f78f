package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;
import static org.hamcrest.Matchers.matchesPattern;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class RecordChangesPagesTest extends ChangesTold {

    @Test
    void who_changed_a_customer_when_and_what_it_said_before_stands_in_both_languages() {
        for (boolean french : List.of(false, true)) {
            var shop = shops.open("CA-QC", french ? "fr" : "en");
            UUID customer = homes.machines(shop, "en").customer();
            rewrite(shop, customer, "one", "0");
            rewrite(shop, customer, "each", "1");
            String path = shop.at("changes/customers/" + customer);
            as(shop.owner())
                    .get(path)
                    .then()
                    .statusCode(200)
                    .body(containsString("Basil Fenn"))
                    .body(containsString(french ? "façon de facturer" : "how invoices come"))
                    .body(containsString(french ? "une seule pour toutes les maisons" : "one for all homes"))
                    .body(containsString(french ? "une par maison" : "one a home"))
                    .body(containsString(french ? "Entré" : "Entered"))
                    .body(not(matchesPattern("(?s).*<td[^>]*>each</td>.*")));
            as(shop.office()).get(path).then().statusCode(404);
            as(shop.technician()).get(path).then().statusCode(404);
            as(shop.office())
                    .get(shop.at("customers/" + customer))
                    .then()
                    .body(not(containsString("changes/customers")));
            as(shop.owner()).get(shop.at("customers/" + customer)).then().body(containsString("changes/customers"));
        }
    }

    @Test
    void what_nobody_here_has_is_not_found() {
        var shop = shops.open("CA-ON", "en");
        var other = shops.open("CA-ON", "en");
        UUID theirs = homes.machines(other, "en").customer();
        as(shop.owner()).get(shop.at("changes/customers/" + theirs)).then().statusCode(404);
        as(shop.owner()).get(shop.at("changes/parts/none")).then().statusCode(404);
        for (String page : List.of("0", "-1", "x", "9999999")) {
            as(shop.owner())
                    .get(shop.at("changes/business?page=" + page))
                    .then()
                    .statusCode(404);
        }
    }

    @Test
    void a_long_history_is_leafed_through_fifty_at_a_time() {
        var shop = shops.open("CA-ON", "en");
        UUID customer = homes.machines(shop, "en").customer();
        for (int version = 0; version < 60; version++) {
            rewrite(shop, customer, version % 2 == 0 ? "each" : "one", String.valueOf(version));
        }
        String path = shop.at("changes/customers/" + customer);
        String first = as(shop.owner()).get(path).then().extract().asString();
        assertEquals(
                RecordChanges.A_PAGE,
                Pattern.compile("<td class=\"when keep\">")
                        .matcher(first)
                        .results()
                        .count());
        assertTrue(first.contains("?page=2"));
        as(shop.owner()).get(path + "?page=2").then().statusCode(200).body(not(containsString("page=3")));
        as(shop.owner()).get(path + "?page=7").then().body(containsString("No older change."));
    }

    @Test
    void what_was_taken_away_stays_in_the_history_of_what_it_hung_on() {
        var shop = shops.open("CA-ON", "en");
        UUID home = homes.machines(shop, "en").home();
        String path = shop.at("homes/" + home);
        post(shop.office(), path + "/codes", Map.of("kind", "alarm", "label", "cellar", "secret", "9753"))
                .statusCode(303);
        String access = as(shop.office()).get(path + "/access").then().extract().asString();
        String removal = Pattern.compile("/codes/[0-9a-f-]{36}/removal")
                .matcher(access)
                .results()
                .reduce((_, last) -> last)
                .orElseThrow()
                .group();
        post(shop.office(), path + removal, Map.of()).statusCode(303);
        as(shop.owner())
                .get(path + "/changes")
                .then()
                .body(containsString("cellar"))
                .body(containsString("taken away"))
                .body(not(containsString("9753")));
    }
}
