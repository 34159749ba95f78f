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
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** A deposit from its form to its receipt, an invoice and back, in both languages; the API says the same. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class DepositPagesTest {

    @Inject
    ABilledShop billed;

    private static String customer(AShop.Shop shop) {
        return as(shop.owner()).get(shop.api("invoices")).then().extract().path("find { it.number != null }.customer");
    }

    @Test
    void a_deposit_is_taken_and_given_back() {
        for (String language : new String[] {"en", "fr"}) {
            var shop = billed.open("CA-QC", language);
            boolean french = language.equals("fr");
            String taking = shop.at("money/customers/" + customer(shop) + "/deposits");
            String page = as(shop.office())
                    .get(taking)
                    .then()
                    .statusCode(200)
                    .extract()
                    .asString();
            String home = page.replaceAll("(?s).*?<option value=\"([0-9a-f-]{36})\".*", "$1");
            String day = page.replaceAll("(?s).*?name=\"day\"[^>]*value=\"([0-9-]{10})\".*", "$1");
            var fields = new java.util.HashMap<>(
                    Map.of("home", home, "words", "", "day", day, "amount", "100", "way", "card", "reference", "44"));
            String agreement = page.replaceAll("(?s).*?name=\"agreement\".*?<option value=\"([0-9a-f-]{36})\".*", "$1");
            fields.put("agreement", agreement);
            post(shop.office(), taking, fields).statusCode(422).body(containsString("value=\"44\""));
            fields.put("words", "Boiler");
            String at = post(shop.office(), taking, fields)
                    .statusCode(303)
                    .extract()
                    .header("Location");
            String deposit = at.replaceAll("^.*?(/shop.*?)\\?.*$", "$1");
            as(shop.office())
                    .get(deposit)
                    .then()
                    .statusCode(200)
                    .body(
                            containsString("Boiler"),
                            containsString("agreements/" + agreement),
                            containsString(french ? "Encore gardé" : "Still kept"));
            as(shop.office()).get(deposit + "/pdf").then().statusCode(200).contentType("application/pdf");
            as(shop.office()).get(shop.at("money/deposits")).then().body(containsString("Boiler"));
            as(shop.office())
                    .get(shop.at("money/customers/" + customer(shop) + "/refunds"))
                    .then()
                    .body(
                            containsString(french ? "est un acompte" : "is a deposit"),
                            containsString("money/deposits?customer=" + customer(shop)));
            as(shop.office())
                    .get(shop.at("money/deposits?customer=" + customer(shop)))
                    .then()
                    .body(containsString("Boiler"));
            as(shop.office())
                    .get(shop.at("money/deposits?customer=" + UUID.randomUUID()))
                    .then()
                    .statusCode(200)
                    .body(not(containsString("Boiler")));
            as(shop.office())
                    .get(deposit + "/returns")
                    .then()
                    .body(containsString(french ? "value=\"100,00\"" : "value=\"100.00\""));
            post(shop.office(), deposit + "/returns", Map.of("day", day, "amount", "100.01", "way", "card"))
                    .statusCode(422)
                    .body(
                            containsString("value=\"100.01\""),
                            containsString(french ? "que 100,00\u00a0$ de" : "Only $100.00 of"));
            post(shop.office(), deposit + "/returns", Map.of("day", day, "amount", "100,00", "way", "card"))
                    .statusCode(303);
            as(shop.office())
                    .get(deposit)
                    .then()
                    .body(containsString(french ? "Il n’en reste rien" : "Nothing is left of it"));
        }
    }

    @Test
    void the_api_keeps_applies_and_gives_back() {
        var shop = billed.open("CA-QC", "en");
        JsonPath invoice =
                as(shop.owner()).get(shop.api("invoices")).then().extract().jsonPath();
        Map<String, Object> one = invoice.getMap("find { it.number != null }");
        send(
                        shop.owner(),
                        shop.api("deposits"),
                        Map.of(
                                "customer",
                                one.get("customer"),
                                "home",
                                one.get("home"),
                                "agreement",
                                UUID.randomUUID().toString(),
                                "amount",
                                "20.00",
                                "way",
                                "cheque",
                                "words",
                                "Boiler"))
                .statusCode(422)
                .body("refusals.field", hasItem("agreement"));
        String id = send(
                        shop.owner(),
                        shop.api("deposits"),
                        Map.of(
                                "customer", one.get("customer"),
                                "home", one.get("home"),
                                "amount", "20.00",
                                "way", "cheque",
                                "words", "Boiler"))
                .statusCode(201)
                .body("left.amount", equalTo("20.00"))
                .extract()
                .path("id");
        send(
                        shop.owner(),
                        shop.api("deposits/" + id + "/applications"),
                        Map.of("invoice", one.get("id"), "amount", "5"))
                .statusCode(201)
                .body("left.amount", equalTo("15.00"));
        send(shop.owner(), shop.api("deposits/" + id + "/returns"), Map.of("amount", "15.01", "way", "card"))
                .statusCode(422)
                .body("refusals.field", hasItem("amount"));
        send(shop.owner(), shop.api("deposits/" + id + "/returns"), Map.of("amount", "15.00", "way", "card"))
                .statusCode(201)
                .body("left.amount", equalTo("0.00"));
        List<String> left =
                as(shop.owner()).get(shop.api("deposits")).then().extract().path("left.amount");
        org.junit.jupiter.api.Assertions.assertEquals(List.of("0.00"), left);
    }
}
