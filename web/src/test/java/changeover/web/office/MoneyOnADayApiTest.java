package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The money of a day, the journal and what plans earned and cost, as documents and as tables. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class MoneyOnADayApiTest {

    @Inject
    ABilledShop billed;

    @Test
    void the_figures_of_a_day_are_the_sums_of_their_agreements() {
        var shop = billed.open("CA-QC", "fr");
        JsonPath earned = as(shop.office())
                .get(shop.api("earned"))
                .then()
                .statusCode(200)
                .extract()
                .jsonPath();
        assertTrue(earned.getList("agreements").size() > 0);
        for (String span : List.of("month", "year", "ever")) {
            assertEquals(amount(earned, "plans." + span), sum(earned, "agreements.earned." + span + ".amount"), span);
            assertEquals(
                    amount(earned, "together." + span),
                    amount(earned, "plans." + span).add(amount(earned, "visits." + span)),
                    span);
        }
        assertEquals(amount(earned, "prepaid"), sum(earned, "agreements.prepaid.amount"));
        BigDecimal ages = BigDecimal.ZERO;
        for (String age : List.of("notDue", "late30", "late60", "late90", "older")) {
            ages = ages.add(amount(earned, "open." + age));
        }
        assertEquals(amount(earned, "open.all"), ages);
        String table = as(shop.office())
                .get(shop.api("earned.csv"))
                .then()
                .statusCode(200)
                .header("Content-Type", startsWith("text/csv"))
                .body(startsWith("day,agreement,plan,customer"))
                .extract()
                .asString();
        assertEquals(earned.getList("agreements").size() + 1, table.strip().split("\r\n").length);
        as(shop.office())
                .get(shop.api("earned?day=2001-01-01"))
                .then()
                .statusCode(200)
                .body("together.ever.amount", equalTo("0.00"))
                .body("deposits.amount", equalTo("0.00"))
                .body("givenUp.taxOfEver.amount", equalTo("0.00"));
        as(shop.office()).get(shop.api("earned?day=soon")).then().statusCode(422);
        as(shop.technician()).get(shop.api("earned")).then().statusCode(404);
    }

    @Test
    void the_journal_balances_and_its_table_has_a_row_a_posting() {
        var shop = billed.open("CA-ON", "en");
        String days = "?from=2025-01-01&until=2027-12-31";
        JsonPath journal = as(shop.office())
                .get(shop.api("journal" + days))
                .then()
                .statusCode(200)
                .extract()
                .jsonPath();
        BigDecimal debit = sum(journal, "entries.postings.flatten().debit.amount");
        assertTrue(debit.signum() > 0);
        assertEquals(debit, sum(journal, "entries.postings.flatten().credit.amount"));
        String table = as(shop.office())
                .get(shop.api("journal.csv" + days))
                .then()
                .statusCode(200)
                .body(startsWith("date,entry,document,role"))
                .extract()
                .asString();
        assertEquals(
                journal.getList("entries.postings.flatten()").size() + 1,
                table.strip().split("\r\n").length);
        as(shop.office())
                .get(shop.api("journal?from=2026-05-01&until=2026-04-01"))
                .then()
                .statusCode(422)
                .body(containsString("until"));
    }

    @Test
    void what_plans_earned_and_cost_is_for_the_owner() {
        var shop = billed.open("CA-QC", "en");
        post(
                        shop.owner(),
                        shop.at("shop/costs"),
                        Map.of("from", "2025-01-01", "setUpMinutes", "15", "way", "hour", "overhead", "18"))
                .statusCode(303);
        JsonPath results = as(shop.owner())
                .get(shop.api("plan-results?over=year"))
                .then()
                .statusCode(200)
                .extract()
                .jsonPath();
        assertEquals(amount(results, "earned"), sum(results, "plans.earned.amount"));
        assertEquals(amount(results, "cost"), sum(results, "plans.agreements.flatten().cost.amount"));
        assertTrue(results.getList("missing.what").contains("hour"));
        as(shop.office()).get(shop.api("plan-results")).then().statusCode(404);
        as(shop.owner()).get(shop.api("plan-results?over=ever")).then().statusCode(422);
    }

    private static BigDecimal amount(JsonPath document, String path) {
        return new BigDecimal(document.getString(path + ".amount"));
    }

    private static BigDecimal sum(JsonPath document, String path) {
        return document.getList(path, String.class).stream()
                .map(BigDecimal::new)
                .reduce(new BigDecimal("0.00"), BigDecimal::add);
    }
}
