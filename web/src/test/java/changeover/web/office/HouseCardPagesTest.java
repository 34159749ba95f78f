package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;
import static org.hamcrest.CoreMatchers.startsWith;

import changeover.contracts.PostgresForTests;
import changeover.web.ALivedInHome;
import changeover.web.AShop;
import changeover.web.Shown;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.Map;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class HouseCardPagesTest {

    @Inject
    AShop shops;

    @Inject
    ALivedInHome homes;

    @Test
    void a_home_without_a_plan_says_what_to_do_next() {
        var shop = shops.open("CA-ON", "en");
        var lived = homes.machines(shop, "en");
        as(shop.office())
                .get(shop.at("homes/" + lived.home()))
                .then()
                .statusCode(200)
                .body(containsString("14 Larch Street, Port Ambrose"))
                .body(containsString("Offer a plan"))
                .body(containsString("16\u00a0×\u00a025\u00a0×\u00a04"))
                .body(containsString("In the yard: call from the truck."))
                .body(not(containsString("2468")));
    }

    @Test
    void the_card_shows_the_year_as_a_band_and_as_a_table_in_both_languages() {
        for (String language : new String[] {"en", "fr"}) {
            var shop = shops.open("CA-ON", language);
            var lived = homes.sold(shop, language);
            String page = as(shop.office())
                    .header("Accept-Language", language)
                    .get(shop.at("homes/" + lived.home()))
                    .then()
                    .statusCode(200)
                    .body(containsString(language.equals("fr") ? "L’année en tableau" : "The year as a table"))
                    .body(containsString(language.equals("fr") ? "Acceptée" : "Accepted"))
                    .extract()
                    .asString();
            Shown.keep("card-" + language, page);
        }
    }

    @Test
    void a_code_is_shown_for_a_reason_once_and_kept_in_no_cache() {
        var shop = shops.open("CA-ON", "en");
        var lived = homes.machines(shop, "en");
        String path = shop.at("homes/" + lived.home() + "/codes/reading");
        post(shop.office(), path, Map.of("reason", "")).statusCode(422).body(not(containsString("2468")));
        post(shop.office(), path, Map.of("reason", "The neighbour is away"))
                .statusCode(200)
                .header("Cache-Control", "no-store")
                .body(containsString("2468"));
    }

    @Test
    void the_card_and_the_tags_are_printed_and_codes_only_for_the_owner() {
        var shop = shops.open("CA-ON", "fr");
        var lived = homes.sold(shop, "fr");
        for (String paper : new String[] {"card.pdf", "tags.pdf", "tags.pdf?on=labels"}) {
            as(shop.office())
                    .get(shop.at("homes/" + lived.home() + "/" + paper))
                    .then()
                    .statusCode(200)
                    .contentType("application/pdf")
                    .body(startsWith("%PDF"));
        }
        String path = shop.at("homes/" + lived.home() + "/card.pdf");
        post(shop.office(), path, Map.of("reason", "for the file")).statusCode(404);
        post(shop.owner(), path, Map.of("reason", "")).statusCode(422);
        post(shop.owner(), path, Map.of("reason", "for the file")).statusCode(200);
    }

    @Test
    void another_business_finds_nothing_of_it() {
        var shop = shops.open("CA-ON", "en");
        var lived = homes.machines(shop, "en");
        var other = shops.open("CA-ON", "en");
        for (String path : new String[] {"", "/card.pdf", "/tags.pdf"}) {
            as(other.office())
                    .get(other.at("homes/" + lived.home() + path))
                    .then()
                    .statusCode(404);
        }
        post(other.owner(), other.at("homes/" + lived.home() + "/codes/reading"), Map.of("reason", "x"))
                .statusCode(404);
    }

    @Test
    void a_visit_that_no_plan_promised_is_set_from_the_card() {
        var shop = shops.open("CA-ON", "en");
        var lived = homes.machines(shop, "en");
        String path = shop.at("homes/" + lived.home() + "/visits");
        as(shop.office()).get(path + "/new").then().statusCode(200).body(containsString("Somebody called"));
        var asked =
                Map.of("kind", "call", "first", "2026-12-01", "last", "2026-11-01", "minutes", "60", "note", "No heat");
        post(shop.office(), path, asked).statusCode(422).body(containsString("No heat"));
        var right =
                Map.of("kind", "call", "first", "2026-12-01", "last", "2026-12-04", "minutes", "60", "note", "No heat");
        post(shop.office(), path, right).statusCode(303);
        as(shop.office())
                .get(shop.at("homes/" + lived.home()))
                .then()
                .statusCode(200)
                .body(containsString("no day yet"));
        var other = shops.open("CA-ON", "en");
        post(other.office(), other.at("homes/" + lived.home() + "/visits"), right)
                .statusCode(404);
    }
}
