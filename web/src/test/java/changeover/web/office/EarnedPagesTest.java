package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.endsWith;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
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

    /** Nine figures of what was earned, what is kept and what lies in stock: the foot of each one's list says the same. */
    @Test
    void the_sum_of_each_list_is_the_number_that_opened_it() {
        for (String language : new String[] {"en", "fr"}) {
            var shop = billed.open("CA-QC", language);
            String page = as(shop.owner())
                    .get(shop.at("money/earned"))
                    .then()
                    .statusCode(200)
                    .extract()
                    .asString();
            var links = Pattern.compile(
                            "href=\"([^\"]*money/earned/(?:behind|kept|stock|open|deposits|agreements)[^\"]*)\">([^<]*[0-9][^<]*)</a>")
                    .matcher(page)
                    .results()
                    .filter(link -> !link.group(1).contains("of=ended"))
                    .toList();
            assertTrue(links.size() >= 18, links.size() + " links");
            for (var link : links) {
                String list = as(shop.owner())
                        .get(link.group(1).replace("&amp;", "&"))
                        .then()
                        .statusCode(200)
                        .extract()
                        .asString();
                boolean empty = list.contains("class=\"empty\"");
                String foot = empty ? "" : list.substring(list.indexOf("<tfoot>"), list.indexOf("</tfoot>"));
                assertTrue(
                        empty
                                ? link.group(2).matches("\\$?0[.,]00(\u00a0\\$)?")
                                : foot.contains(">" + link.group(2) + "</td>"),
                        link.group(1) + " says " + link.group(2) + ", its list " + foot);
            }
        }
    }

    /** What is open of a document is given up: the amount and its part of the taxes stand there, and their list says the same. */
    @Test
    void what_was_given_up_stands_with_its_part_of_the_taxes() {
        var shop = billed.open("CA-QC", "en");
        String today =
                as(shop.office()).get(shop.api("earned")).then().extract().path("day");
        String invoice =
                as(shop.office()).get(shop.api("invoices")).then().extract().path("find { it.number != null }.id");
        post(
                        shop.owner(),
                        shop.at("money/invoices/" + invoice + "/write-off"),
                        Map.of("day", today, "why", "Moved away, no address"))
                .statusCode(303);
        String page =
                as(shop.office()).get(shop.at("money/earned")).then().extract().asString();
        var links = Pattern.compile("href=\"([^\"]*money/write-offs[^\"]*)\">([^<]*)</a>")
                .matcher(page)
                .results()
                .toList();
        assertEquals(4, links.size());
        for (var link : links) {
            assertTrue(link.group(2).matches("\\$[1-9][0-9.,]*"), link.group(2));
            as(shop.office())
                    .get(link.group(1).replace("&amp;", "&"))
                    .then()
                    .statusCode(200)
                    .body(containsString(link.group(2)));
        }
    }

    @Test
    void the_money_page_shows_any_day() {
        var shop = shops.open("CA-ON", "en");
        as(shop.office())
                .redirects()
                .follow(false)
                .get(shop.at("money?day=2026-03-31"))
                .then()
                .statusCode(303)
                .header("Location", endsWith(shop.at("money/earned?day=2026-03-31")));
        as(shop.office())
                .get(shop.at("money?day=2026-03-31"))
                .then()
                .statusCode(200)
                .body(containsString("Parts in stock"))
                .body(not(containsString("money/plans")));
        as(shop.office())
                .get(shop.at("money/earned/behind?of=all&in=century"))
                .then()
                .statusCode(404);
        as(shop.office()).get(shop.at("money/earned/behind?of=nothing")).then().statusCode(404);
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
