package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.pricing.ItemKind;
import changeover.billing.pricing.PriceEntry;
import changeover.billing.pricing.Prices;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Which plans lose money, and what opens behind each number. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class PlanResultPagesTest {

    @Inject
    AShop shops;

    @Inject
    EntityManager rows;

    @Inject
    Parts parts;

    @Inject
    Prices prices;

    @Inject
    ABilledShop billed;

    @Test
    void each_number_opens_the_agreements_that_it_is_the_sum_of_in_both_languages() {
        for (String language : List.of("en", "fr")) {
            boolean french = language.equals("fr");
            var shop = billed.open("CA-QC", language);
            as(shop.owner())
                    .get(shop.at("money/plans"))
                    .then()
                    .statusCode(200)
                    .body(containsString(
                            french ? "Ce que coûte une heure de technicien." : "What an hour of a technician costs."));
            figures(shop);
            posted(shop);
            String page = as(shop.owner())
                    .get(shop.at("money/plans?over=year&rise=10"))
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "Marge par formule" : "Margin by plan"))
                    .body(containsString("<svg"))
                    .body(not(containsString("style=")))
                    .body(containsString(
                            french ? "Si les prix montent au renouvellement" : "If prices rise at renewal"))
                    .extract()
                    .asString();
            String list = as(shop.owner())
                    .get(shop.at("money/plans/agreements?over=year"))
                    .then()
                    .statusCode(200)
                    .body(containsString("/agreements/"))
                    .extract()
                    .asString();
            List<String> sums = amounts(foot(list));
            assertEquals(3, sums.size(), sums.toString());
            assertEquals(sums, amounts(foot(page)));
            assertTrue(page.contains("/money/plans/agreements?plan="), page);
            for (String by : List.of("plan", "agreement", "technician", "kind")) {
                String lines = at(shop, "money/plans/minutes?from=2026-01-01&until=2027-12-31&by=" + by);
                assertTrue(lines.contains(french ? "Minutes prises" : "Minutes taken"), lines);
                Matcher line = Pattern.compile("href=\"([^\"]*minutes/visits[^\"]*key=[^\"]*)\">([^<]*)</a>")
                        .matcher(lines);
                assertTrue(line.find(), lines);
                do {
                    String figure = line.group(2);
                    String behind = read(shop, line.group(1));
                    assertTrue(foot(behind).contains(figure) || figure.equals("1"), figure + behind);
                } while (line.find());
            }
            Matcher figure = Pattern.compile("href=\"([^\"]*money/plans/(visits|rise)[^\"]*)\">([^<]*)</a>")
                    .matcher(page + list);
            int opened = 0;
            while (figure.find()) {
                String behind = read(shop, figure.group(1));
                String said = figure.group(3);
                if (said.contains("$")) {
                    assertTrue(
                            behind.contains("<tfoot>") ? foot(behind).contains(said) : said.matches("\\$?0[.,]00.*"),
                            said + " " + behind);
                }
                opened++;
            }
            assertTrue(opened > 6, page);
            String parts = at(shop, "money/plans/visits?over=year&cause=parts");
            assertTrue(parts.contains(french ? "Laissé ou posté</a>" : "Left or posted</a>"), parts);
            assertTrue(foot(parts).contains(french ? "63,00" : "63.00"), parts);
            assertTrue(page.contains(french ? "Aux nouveaux prix" : "At the new prices"), page);
            assertTrue(
                    at(shop, "money/plans/rise?rise=-99&lose=yes").contains(french ? "même alors" : "even then"), page);
            as(shop.owner())
                    .get(shop.at("money/plans/visits?cause=weather"))
                    .then()
                    .statusCode(404);
            as(shop.owner())
                    .get(shop.at("money/plans/minutes/visits?by=weather"))
                    .then()
                    .statusCode(404);
            as(shop.office()).get(shop.at("money/plans/visits")).then().statusCode(404);
            as(shop.office()).get(shop.at("money/plans/rise")).then().statusCode(404);
            as(shop.owner()).get(shop.at("money")).then().body(containsString("money/plans"));
            as(shop.office()).get(shop.at("money")).then().body(not(containsString("money/plans")));
            as(shop.office()).get(shop.at("money/plans")).then().statusCode(404);
            as(shop.office()).get(shop.at("money/plans/agreements")).then().statusCode(404);
            as(shop.office()).get(shop.at("money/plans/minutes")).then().statusCode(404);
        }
    }

    @Test
    void what_is_no_day_and_no_percentage_comes_back_as_typed() {
        var shop = shops.open("CA-ON", "en");
        as(shop.owner())
                .get(shop.at("money/plans?day=soon&rise=much"))
                .then()
                .statusCode(422)
                .body(containsString("value=\"soon\""))
                .body(containsString("rise-wrong"));
        as(shop.owner())
                .get(shop.at("money/plans"))
                .then()
                .statusCode(200)
                .body(containsString("No plan earned or cost anything by this day."));
        as(shop.owner())
                .get(shop.at("money/plans/minutes?from=2026-02-30"))
                .then()
                .statusCode(422);
    }

    private static String at(AShop.Shop shop, String address) {
        return read(shop, shop.at(address));
    }

    private static String read(AShop.Shop shop, String path) {
        return as(shop.owner())
                .urlEncodingEnabled(false)
                .get(path.replace("&amp;", "&"))
                .then()
                .statusCode(200)
                .extract()
                .asString();
    }

    /** The first foot of a table on the page. */
    private static String foot(String page) {
        int from = page.indexOf("<tfoot>");
        return page.substring(from, page.indexOf("</tfoot>", from));
    }

    private static List<String> amounts(String html) {
        return Pattern.compile("-?\\$?[0-9][0-9.,\u00a0]*[0-9](\u00a0\\$)?")
                .matcher(html.replaceAll("<[^>]*>", " "))
                .results()
                .map(one -> one.group())
                .toList();
    }

    /** Four filters at 15.75 that left for a home today. */
    private void posted(AShop.Shop shop) {
        LocalDate today = LocalDate.now(ZoneId.of("America/Toronto"));
        shops.in(shop, () -> {
            parts.keep(new KnownPart("f-16", new Wording("Filter", "Filtre"), "C62", null, null));
            prices.set(new PriceEntry(
                    ItemKind.PART, "f-16", Money.of("38.00", "CAD"), Money.of("15.75", "CAD"), today.withDayOfYear(1)));
            return rows.createNativeQuery("""
                            insert into part_given (home_id, agreement_id, operation_id, part_code, part_kind, quantity,
                              place_id, how, day)
                            select a.home_id, a.id, uuidv7(), 'f-16', 'filter', 4, p.id, 'posted', cast(:day as date)
                              from agreement a join agreement_acceptance y on y.agreement_id = a.id, stock_place p limit 1""")
                    .setParameter("day", today.toString())
                    .executeUpdate();
        });
    }

    private static void figures(AShop.Shop shop) {
        send(
                        shop.owner(),
                        shop.api("prices"),
                        Map.of("kind", "labour", "price", "112.00", "cost", "57.00", "from", "2025-01-01"))
                .statusCode(201);
        send(
                        shop.owner(),
                        shop.api("prices"),
                        Map.of("kind", "travel", "price", "45.00", "cost", "21.00", "from", "2025-01-01"))
                .statusCode(201);
        post(
                        shop.owner(),
                        shop.at("shop/costs"),
                        Map.of("from", "2025-01-01", "setUpMinutes", "15", "way", "percent", "overhead", "20"))
                .statusCode(303);
    }
}
