package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertFalse;

import changeover.contracts.PostgresForTests;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Collecting from accounts, statements by mail, and what the crew is told where something is unpaid. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class CollectedTest {

    static final LocalDate DAY = LocalDate.now(ZoneId.of("America/Toronto"));

    @Inject
    ABilledShop billed;

    @Test
    void what_is_due_is_collected_from_whoever_agreed_and_comes_back_in_one_click() {
        for (boolean french : new boolean[] {false, true}) {
            var shop = billed.open("CA-ON", french ? "fr" : "en");
            String customer =
                    as(shop.owner()).get(shop.api("invoices")).then().extract().path("[0].customer");
            String due = DAY.plusDays(40).toString();
            as(shop.office())
                    .get(shop.at("money/collection?until=" + due))
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "Rien n’est à payer ce jour-là" : "Nothing is due by that day"));
            String mandate = shop.at("money/customers/" + customer + "/mandate");
            post(shop.office(), mandate, Map.of("signedOn", DAY.plusDays(1).toString(), "reference", "P-14"))
                    .statusCode(422);
            post(shop.office(), mandate, Map.of("signedOn", DAY.toString(), "reference", "P-14"))
                    .statusCode(303);
            as(shop.office()).get(mandate).then().statusCode(200).body(containsString("P-14"));
            String page = as(shop.office())
                    .get(shop.at("money/collection?until=" + due))
                    .then()
                    .statusCode(200)
                    .body(containsString("P-14"))
                    .extract()
                    .asString();
            as(shop.office())
                    .get(shop.at("money/collection/collection.csv?until=" + due))
                    .then()
                    .statusCode(200)
                    .body(containsString(",P-14,"));
            String invoice = page.replaceAll("(?s).*?name=\"invoice\" value=\"([0-9a-f-]{36})\".*", "$1");
            post(shop.office(), shop.at("money/collection"), Map.of("day", DAY.toString()))
                    .statusCode(422);
            String drawn = page.replaceAll("(?s).*?name=\"drawn-" + invoice + "\" value=\"([0-9.]+)\".*", "$1");
            send(shop.owner(), shop.api("payments"), Map.of("customer", customer, "amount", "40.00", "way", "card"))
                    .statusCode(201);
            Map<String, String> form = Map.of(
                    "day",
                    DAY.plusDays(1).toString(),
                    "until",
                    due,
                    "invoice",
                    invoice,
                    "drawn-" + invoice,
                    drawn,
                    "before-" + invoice,
                    "0");
            post(shop.office(), shop.at("money/collection"), form)
                    .statusCode(422)
                    .body(containsString("name=\"drawn-" + invoice + "\" value=\"" + drawn + "\""));
            Map<String, String> collected = new HashMap<>(form);
            collected.put("day", DAY.toString());
            post(shop.office(), shop.at("money/collection"), collected).statusCode(303);
            post(shop.office(), shop.at("money/collection"), collected).statusCode(422);
            as(shop.office())
                    .get(shop.at("money/customers/" + customer))
                    .then()
                    .body(containsString(french ? "40,00" : "40.00"));
            page = as(shop.office())
                    .get(shop.at("money/collection?until=" + due))
                    .then()
                    .extract()
                    .asString();
            String payment = page.replaceAll("(?s).*/money/payments/([0-9a-f-]{36})/undoing/return.*", "$1");
            post(shop.office(), shop.at("money/payments/" + payment + "/undoing/return"), Map.of())
                    .statusCode(303);
            as(shop.office())
                    .get(shop.at("money/collection?until=" + due))
                    .then()
                    .body(containsString(french ? "déjà retourné" : "came back before"));
            post(shop.office(), mandate + "/end", Map.of()).statusCode(303);
            as(shop.technician()).get(shop.at("money/collection")).then().statusCode(404);
        }
    }

    @Test
    void statements_of_a_period_are_made_and_kept() {
        for (boolean french : new boolean[] {false, true}) {
            var shop = billed.open("CA-ON", french ? "fr" : "en");
            String customer =
                    as(shop.owner()).get(shop.api("invoices")).then().extract().path("[0].customer");
            String days = "?from=" + DAY.minusDays(5) + "&until=" + DAY;
            as(shop.office()).get(shop.at("money/statements")).then().statusCode(200);
            as(shop.office())
                    .get(shop.at("money/statements" + days))
                    .then()
                    .statusCode(200)
                    .body(containsString(customer));
            Map<String, String> nobody = Map.of("from", DAY.minusDays(5).toString(), "until", DAY.toString());
            String again = post(shop.office(), shop.at("money/statements"), nobody)
                    .statusCode(422)
                    .body(containsString("value=\"" + DAY.minusDays(5) + "\""))
                    .extract()
                    .asString();
            assertFalse(again.contains("value=\"" + customer + "\" checked"), again);
            Map<String, String> form =
                    Map.of("from", DAY.minusDays(5).toString(), "until", DAY.toString(), "customer", customer);
            post(shop.office(), shop.at("money/statements"), form)
                    .statusCode(303)
                    .header("Location", containsString("statements-sent"));
            post(shop.office(), shop.at("money/statements"), form)
                    .statusCode(303)
                    .header("Location", containsString("statement-none"));
            String theirs = shop.at("money/customers/" + customer + "/statements");
            String page = as(shop.office())
                    .get(theirs)
                    .then()
                    .statusCode(200)
                    .body(not(containsString(french ? "Aucun relevé" : "No statement was made")))
                    .extract()
                    .asString();
            String statement = page.replaceAll("(?s).*/money/statements/([0-9a-f-]{36})/pdf.*", "$1");
            as(shop.office())
                    .get(shop.at("money/statements/" + statement + "/pdf"))
                    .then()
                    .statusCode(200)
                    .contentType("application/pdf");
            post(
                            shop.office(),
                            theirs,
                            Map.of(
                                    "from",
                                    DAY.toString(),
                                    "until",
                                    DAY.plusDays(1).toString()))
                    .statusCode(422);
            post(shop.office(), shop.at("money/statements"), Map.of("from", DAY.toString(), "until", DAY.toString()))
                    .statusCode(422);
        }
    }

    @Test
    void the_owner_rules_and_the_office_says_a_word_about_one_customer() {
        for (boolean french : new boolean[] {false, true}) {
            var shop = billed.open("CA-ON", french ? "fr" : "en");
            String customer =
                    as(shop.owner()).get(shop.api("invoices")).then().extract().path("[0].customer");
            Map<String, String> rules = Map.of("ask-days", "30", "ask-least", "20", "not-days", "90", "not-least", "");
            post(shop.office(), shop.at("money/serving"), rules).statusCode(404);
            post(shop.owner(), shop.at("money/serving"), rules).statusCode(303);
            as(shop.office())
                    .get(shop.at("money/serving"))
                    .then()
                    .statusCode(200)
                    .body(containsString("value=\"90\""));
            String word = shop.at("money/customers/" + customer + "/serving");
            post(shop.office(), word, Map.of("what", "ask", "why", "")).statusCode(422);
            post(shop.office(), word, Map.of("what", "ask", "why", "Twice late"))
                    .statusCode(303);
            as(shop.office())
                    .get(word)
                    .then()
                    .statusCode(200)
                    .body(containsString("Twice late"))
                    .body(containsString(french ? "Consulter d’abord le bureau" : "Ask the office first"));
            as(shop.technician()).get(word).then().statusCode(404);
        }
    }
}
