package changeover.web.office;

import static changeover.web.AShop.as;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class TaxReportPagesTest {

    static final LocalDate DAY = LocalDate.now(ZoneId.of("America/Toronto"));

    @Inject
    AShop shops;

    @Inject
    ABilledShop billed;

    private static String year() {
        return "?from=" + DAY.minusMonths(1) + "&until=" + DAY;
    }

    @Test
    void each_figure_opens_its_documents_and_the_file_says_the_same() {
        for (String language : new String[] {"en", "fr"}) {
            var shop = billed.open("CA-QC", language);
            String page = as(shop.office())
                    .get(shop.at("money/tax-report" + year()))
                    .then()
                    .statusCode(200)
                    .body(containsString(language.equals("fr") ? "Rapport de taxes" : "Tax report"))
                    .extract()
                    .asString();
            String file = as(shop.office())
                    .get(shop.at("money/tax-report/taxes.csv" + year()))
                    .then()
                    .statusCode(200)
                    .header("Content-Type", containsString("text/csv"))
                    .extract()
                    .asString();
            assertTrue(file.startsWith("from,until,region,tax,percent,category,invoiced_base,"));
            assertTrue(file.contains(",CA-ON,hst,13,S,389.00,50.57,0.00,0.00,389.00,50.57,88.50,11.50,CAD"), file);
            Matcher figure = Pattern.compile("href=\"([^\"]*tax-report/(?:documents|sales)[^\"]*)\">([^<]*)</a>")
                    .matcher(page);
            int opened = 0;
            while (figure.find()) {
                String list = as(shop.office())
                        .urlEncodingEnabled(false)
                        .get(figure.group(1).replace("&amp;", "&"))
                        .then()
                        .statusCode(200)
                        .extract()
                        .asString();
                if (list.contains("<tfoot>")) {
                    String foot = list.substring(list.indexOf("<tfoot>"), list.indexOf("</tfoot>"));
                    assertTrue(foot.contains(figure.group(2)), figure.group(2) + list);
                    opened++;
                } else {
                    assertTrue(figure.group(2).contains(language.equals("fr") ? "0,00" : "0.00"), figure.group(2));
                }
            }
            assertTrue(opened > 6, page);
        }
    }

    @Test
    void the_api_says_sums_that_are_the_sums() {
        var shop = billed.open("CA-QC", "en");
        String invoiced = as(shop.owner())
                .get(shop.api("tax-report" + year()))
                .then()
                .statusCode(200)
                .body("until", equalTo(DAY.toString()))
                .body("credited.amount", equalTo("0.00"))
                .extract()
                .path("invoiced.amount");
        List<String> taxes = as(shop.owner())
                .get(shop.api("tax-report" + year()))
                .then()
                .extract()
                .path("taxes.invoiced.tax.amount");
        assertEquals(
                new java.math.BigDecimal(invoiced),
                taxes.stream()
                        .map(java.math.BigDecimal::new)
                        .reduce(java.math.BigDecimal.ZERO.setScale(2), java.math.BigDecimal::add));
    }

    @Test
    void days_that_are_none_come_back_with_a_sentence() {
        var shop = shops.open("CA-QC", "fr");
        as(shop.office())
                .get(shop.at("money/tax-report?from=2026-05-01&until=2026-04-01"))
                .then()
                .statusCode(422)
                .body(containsString("Le dernier jour est avant le premier."))
                .body(containsString("2026-05-01"));
        as(shop.office())
                .get(shop.api("tax-report?from=2026-05-01&until=soon"))
                .then()
                .statusCode(422);
        as(shop.office())
                .get(shop.at("money/tax-report"))
                .then()
                .statusCode(200)
                .body(not(containsString("NaN")));
    }

    @Test
    void only_the_office_sees_it_and_nobody_a_tax_that_is_not_there() {
        var shop = shops.open("CA-QC", "en");
        as(shop.technician()).get(shop.at("money/tax-report")).then().statusCode(404);
        as(shop.technician()).get(shop.api("tax-report")).then().statusCode(404);
        as(UUID.randomUUID()).get(shop.api("tax-report")).then().statusCode(404);
        as(shop.office())
                .get(shop.at("money/tax-report/documents?what=paid&region=CA-XX&tax=gst&percent=5&category=S"))
                .then()
                .statusCode(404);
        as(shop.office())
                .get(shop.at("money/tax-report/documents?what=paid&region=CA-QC"))
                .then()
                .statusCode(404);
        as(shop.office())
                .get(shop.at("money/tax-report/sales?what=paid"))
                .then()
                .statusCode(404);
    }
}
