package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.hasItem;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.web.ALivedInHome;
import changeover.web.AShop;
import changeover.web.Shown;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What the year will use up, as a list to buy from: on the page, as a file, over the API. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class YearsPartsPagesTest {

    private static final LocalDate TODAY = LocalDate.now(ZoneId.of("America/Toronto"));

    @Inject
    AShop shops;

    @Inject
    ALivedInHome homes;

    @Test
    void the_pad_of_the_autumn_and_the_filters_of_the_household_stand_on_the_list() {
        for (String language : new String[] {"en", "fr"}) {
            boolean french = language.equals("fr");
            var shop = shops.open("CA-QC", language);
            as(shop.office())
                    .get(shop.at("parts/year"))
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "Aucune maison sous une formule" : "No home under a plan"));
            homes.sold(shop, language);
            String page = as(shop.office())
                    .get(shop.at("parts/year"))
                    .then()
                    .statusCode(200)
                    .body(containsString("WP-112"))
                    .body(containsString("16x25"))
                    .body(containsString(french ? "une maison" : "one home"))
                    .body(containsString(french ? "pas encore parmi vos pièces" : "not among your parts yet"))
                    .body(containsString(french ? "Pris seulement au besoin" : "Taken only when needed"))
                    .body(not(containsString("H87")))
                    .extract()
                    .asString();
            Shown.keep("years-parts-" + language, page);
            String file = as(shop.office())
                    .get(shop.at("parts/year/file"))
                    .then()
                    .statusCode(200)
                    .header("Content-Type", containsString("text/csv"))
                    .extract()
                    .asString();
            assertTrue(file.startsWith(french ? "piece,code,format" : "part,code,size"), file);
            assertTrue(file.contains("WP-112"), file);
        }
    }

    @Test
    void a_household_that_finds_its_filters_grey_early_needs_more_of_them() {
        var shop = shops.open("CA-ON", "en");
        var lived = homes.sold(shop, "en");
        float usual = filters(shop);
        String looks = shop.at("homes/" + lived.home() + "/machines/" + lived.filter() + "/rhythm/looks");
        for (int days : new int[] {150, 115, 80, 45, 10}) {
            post(
                            shop.office(),
                            looks,
                            Map.of(
                                    "found",
                                    "grey",
                                    "changed",
                                    "yes",
                                    "by",
                                    "Adèle",
                                    "day",
                                    TODAY.minusDays(days).toString()))
                    .statusCode(303);
        }
        float early = filters(shop);
        assertTrue(early > usual, early + " of " + usual);
        as(shop.office())
                .get(shop.api("parts/year"))
                .then()
                .body("parts.kind", hasItem("humidifier-pad"))
                .body("parts.find { it.kind == 'humidifier-pad' }.year.middle", equalTo(1))
                .body("parts.find { it.kind == 'humidifier-pad' }.homes", equalTo(1));
        assertEquals(filters(shop), early);
    }

    private static float filters(AShop.Shop shop) {
        Number middle = as(shop.office())
                .get(shop.api("parts/year"))
                .then()
                .statusCode(200)
                .extract()
                .path("parts.find { it.kind == 'filter' }.year.middle");
        return middle.floatValue();
    }
}
