package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.not;

import changeover.contracts.PostgresForTests;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Money that comes back from the bank, with its fee, and money that goes back to the customer. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class PaidBackTest {

    static final LocalDate DAY = LocalDate.now(ZoneId.of("America/Toronto"));

    @Inject
    ABilledShop billed;

    @Test
    void where_a_fixed_fee_may_be_forbidden_the_pages_that_set_one_warn_with_the_source() {
        for (boolean french : new boolean[] {false, true}) {
            var shop = billed.open("CA-QC", french ? "fr" : "en");
            for (String page : new String[] {"money/fees", "money/reminders/ladder/step", "shop/prices"}) {
                as(shop.owner())
                        .get(shop.at(page))
                        .then()
                        .statusCode(200)
                        .body(containsString("c. P-40.1), " + (french ? "art. 13" : "s. 13")))
                        .body(containsString(french ? "peuvent être interdits ici" : "may be forbidden here"));
            }
        }
    }

    @Test
    void a_returned_cheque_in_one_click_with_the_fee_of_the_place() {
        for (boolean french : new boolean[] {false, true}) {
            var shop = billed.open("CA-ON", french ? "fr" : "en");
            String customer =
                    as(shop.owner()).get(shop.api("invoices")).then().extract().path("[0].customer");
            Map<String, String> fee = Map.of(
                    "kind", "returned", "region", "CA-ON", "from", DAY.toString(), "amount", "45.00", "source", "no");
            post(shop.office(), shop.at("money/fees"), fee).statusCode(404);
            post(shop.owner(), shop.at("money/fees"), fee)
                    .statusCode(422)
                    .body(containsString(french ? "la clause de votre entente" : "the clause of your agreement"));
            Map<String, String> sourced = new java.util.HashMap<>(fee);
            sourced.put("source", "Agreement, clause 9");
            post(shop.owner(), shop.at("money/fees"), sourced).statusCode(303);
            post(shop.owner(), shop.at("money/fees"), sourced).statusCode(422);
            as(shop.office())
                    .get(shop.at("money/fees"))
                    .then()
                    .statusCode(200)
                    .body(containsString("Agreement, clause 9"))
                    .body(containsString("Ontario"))
                    .body(not(containsString("P-40.1")));
            String payment = send(
                            shop.owner(),
                            shop.api("payments"),
                            Map.of("customer", customer, "amount", "12.00", "way", "cheque", "reference", "114"))
                    .statusCode(201)
                    .body("kind", equalTo("payment"))
                    .extract()
                    .path("id");
            as(shop.office())
                    .get(shop.at("money/customers/" + customer))
                    .then()
                    .statusCode(200)
                    .body(containsString(payment + "/undoing/return"));
            post(shop.office(), shop.at("money/payments/" + payment + "/undoing/return"), Map.of())
                    .statusCode(303)
                    .header("Location", containsString("payment-returned-fee"));
            post(shop.office(), shop.at("money/payments/" + payment + "/undoing/return"), Map.of())
                    .statusCode(422);
            as(shop.office())
                    .get(shop.at("money/customers/" + customer))
                    .then()
                    .body(containsString(french ? "retourné par la banque" : "returned by the bank"))
                    .body(not(containsString(payment + "/undoing/return")));
            as(shop.office()).get(shop.at("money")).then().body(containsString(french ? "45,00" : "45.00"));
        }
    }

    @Test
    void what_was_paid_too_much_goes_back_and_no_more() {
        for (boolean french : new boolean[] {false, true}) {
            var shop = billed.open("CA-ON", french ? "fr" : "en");
            String customer =
                    as(shop.owner()).get(shop.api("invoices")).then().extract().path("[0].customer");
            String page = shop.at("money/customers/" + customer);
            send(
                            shop.owner(),
                            shop.api("payments"),
                            Map.of("customer", customer, "amount", "500.00", "way", "transfer"))
                    .statusCode(201);
            String credit = as(shop.owner())
                    .get(shop.api("payments") + "?customer=" + customer)
                    .then()
                    .extract()
                    .path("[0].credit.amount");
            as(shop.office()).get(shop.at("money")).then().body(containsString(shop.at("money/earned/kept")));
            as(shop.office())
                    .get(shop.at("money/earned/kept"))
                    .then()
                    .statusCode(200)
                    .body(containsString("/money/customers/" + customer))
                    .body(containsString(french ? credit.replace('.', ',') : credit));
            as(shop.office())
                    .get(shop.at("money/earned/beyond"))
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "ne devait rien sans document" : "without a document that day"));
            as(shop.office())
                    .get(page + "/refunds")
                    .then()
                    .statusCode(200)
                    .body(containsString("value=\"" + (french ? credit.replace('.', ',') : credit) + "\""));
            var over = Map.of("day", DAY.toString(), "amount", "9999.00", "way", "cheque", "reference", "77");
            post(shop.office(), page + "/refunds", over)
                    .statusCode(422)
                    .body(containsString("9999.00"))
                    .body(containsString(french ? "on ne peut pas rendre plus" : "no more can be given back"));
            post(shop.office(), page + "/settling", Map.of())
                    .statusCode(303)
                    .header("Location", containsString("credit-unused"));
            post(
                            shop.office(),
                            page + "/refunds",
                            Map.of("day", DAY.toString(), "amount", "1.00", "way", "cheque", "reference", "77"))
                    .statusCode(303);
            as(shop.office())
                    .get(page)
                    .then()
                    .body(containsString(french ? "remboursement, chèque 77" : "refund, cheque 77"));
            send(shop.owner(), shop.api("refunds"), Map.of("customer", customer, "amount", "9999.00", "way", "card"))
                    .statusCode(422);
            send(shop.owner(), shop.api("refunds"), Map.of("customer", customer, "amount", "2.00", "way", "card"))
                    .statusCode(201)
                    .body("amount.amount", equalTo("2.00"));
            as(shop.owner())
                    .get(shop.api("refunds") + "?customer=" + customer)
                    .then()
                    .statusCode(200)
                    .body("size()", equalTo(2));
            as(shop.technician()).get(page + "/refunds").then().statusCode(404);
        }
    }
}
