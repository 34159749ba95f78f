package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.hasItems;
import static org.hamcrest.CoreMatchers.notNullValue;

import changeover.contracts.PostgresForTests;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** What the pages know of unpaid money, the API says too: holds, serving, mandates, collecting, statements. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class MoneyInApiTest {

    static final LocalDate DAY = LocalDate.now(ZoneId.of("America/Toronto"));

    @Inject
    ABilledShop billed;

    @Test
    void who_is_not_reminded_and_how_the_late_are_served() {
        var shop = billed.open("CA-ON", "en");
        String customer =
                as(shop.owner()).get(shop.api("invoices")).then().extract().path("[0].customer");
        String holds = shop.api("customers/" + customer + "/holds");
        send(shop.office(), holds, Map.of("kind", "dispute", "why", "x"))
                .statusCode(422)
                .body("refusals.field", hasItems("why"));
        String hold = send(
                        shop.office(),
                        holds,
                        Map.of(
                                "kind",
                                "promise",
                                "why",
                                "Pays on Friday",
                                "until",
                                DAY.plusDays(4).toString()))
                .statusCode(201)
                .body("ended", equalTo(null))
                .extract()
                .path("id");
        send(shop.office(), shop.api("holds/" + hold + "/end"), Map.of())
                .statusCode(200)
                .body("ended", equalTo(DAY.toString()));
        send(shop.office(), shop.api("holds/" + hold + "/end"), Map.of()).statusCode(422);
        as(shop.office()).get(holds).then().statusCode(200).body("kind", equalTo(List.of("promise")));
        send(
                        shop.owner(),
                        shop.api("serving"),
                        Map.of("rules", List.of(Map.of("what", "ask", "daysLate", 30, "least", "50.00"))))
                .statusCode(200)
                .body("daysLate", equalTo(List.of(30)));
        as(shop.office()).get(shop.api("serving")).then().body("[0].least.amount", equalTo("50.00"));
        send(shop.owner(), shop.api("serving"), Map.of()).statusCode(422).body("refusals.field", hasItems("rules"));
        send(shop.office(), shop.api("customers/" + customer + "/serving"), Map.of("what", "not", "why", "Twice late"))
                .statusCode(200)
                .body("what", equalTo(List.of("not")));
        as(shop.office())
                .get(shop.api("customers/" + UUID.randomUUID() + "/serving"))
                .then()
                .statusCode(404);
    }

    @Test
    void what_is_due_is_collected_by_mandate() {
        var shop = billed.open("CA-ON", "fr");
        String customer =
                as(shop.owner()).get(shop.api("invoices")).then().extract().path("[0].customer");
        String mandate = shop.api("customers/" + customer + "/mandate");
        String due = shop.api("collection?until=" + DAY.plusDays(40));
        as(shop.office()).get(due).then().statusCode(200).body("size()", equalTo(0));
        send(shop.office(), mandate, Map.of("signedOn", DAY.plusDays(1).toString(), "reference", "P-14"))
                .statusCode(422)
                .body("refusals.field", hasItems("signedOn"));
        send(shop.office(), mandate, Map.of("signedOn", DAY.toString(), "reference", "P-14"))
                .statusCode(201);
        as(shop.office()).get(mandate).then().body("reference", equalTo(List.of("P-14")));
        String invoice = as(shop.office())
                .get(due)
                .then()
                .body("[0].reference", equalTo("P-14"))
                .body("[0].open.amount", notNullValue())
                .extract()
                .path("[0].invoice");
        String open = as(shop.office()).get(due).then().extract().path("[0].open.amount");
        Map<String, Object> list = Map.of("invoices", List.of(Map.of("id", invoice, "amount", open, "before", 0)));
        send(shop.office(), shop.api("collection"), list).statusCode(200).body("collected", equalTo(1));
        send(shop.office(), shop.api("collection"), list).statusCode(422);
        send(shop.office(), mandate + "/end", Map.of()).statusCode(200).body("size()", equalTo(0));
    }

    @Test
    void only_what_the_list_draws_is_collected() {
        for (boolean french : new boolean[] {false, true}) {
            var shop = billed.open("CA-ON", french ? "fr" : "en");
            String customer =
                    as(shop.owner()).get(shop.api("invoices")).then().extract().path("[0].customer");
            send(
                            shop.office(),
                            shop.api("customers/" + customer + "/mandate"),
                            Map.of("signedOn", DAY.toString(), "reference", "P-14"))
                    .statusCode(201);
            Map<String, Object> due = as(shop.office())
                    .get(shop.api("collection?until=" + DAY.plusDays(40)))
                    .then()
                    .extract()
                    .path("[0]");
            String invoice = due.get("invoice").toString();
            String open = ((Map<?, ?>) due.get("open")).get("amount").toString();
            for (String wrong : List.of("0.01", "5000.00")) {
                collect(shop, invoice, wrong)
                        .statusCode(422)
                        .body("refusals[0].field", equalTo("invoices"))
                        .body("refusals[0].sentence", containsString(french ? "Relisez la liste" : "Read the list"));
            }
            send(shop.office(), shop.api("payments"), Map.of("customer", customer, "amount", open, "way", "card"))
                    .statusCode(201);
            collect(shop, invoice, open)
                    .statusCode(422)
                    .body("refusals[0].field", equalTo("invoices"))
                    .body(
                            "refusals[0].sentence",
                            containsString(french ? "n’est pas sur la liste" : "is not on the list"));
            as(shop.office())
                    .get(shop.api("payments?customer=" + customer))
                    .then()
                    .body("way", equalTo(List.of("card", "card")))
                    .body("[0].credit.amount", equalTo("0.00"));
        }
    }

    private static ValidatableResponse collect(AShop.Shop shop, String invoice, String amount) {
        return send(
                shop.office(),
                shop.api("collection"),
                Map.of("invoices", List.of(Map.of("id", invoice, "amount", amount, "before", 0))));
    }

    @Test
    void statements_are_listed_sent_and_kept() {
        var shop = billed.open("CA-ON", "en");
        String from = DAY.minusDays(30).toString();
        String customer = as(shop.office())
                .get(shop.api("statements?from=" + from + "&until=" + DAY))
                .then()
                .statusCode(200)
                .extract()
                .path("[0].customer");
        Map<String, Object> asked =
                Map.of("from", from, "until", DAY.toString(), "customers", List.of(Map.of("id", customer)));
        send(shop.office(), shop.api("statements"), asked).statusCode(200).body("statements", equalTo(1));
        send(shop.office(), shop.api("statements"), asked).statusCode(200).body("statements", equalTo(0));
        String statement = as(shop.office())
                .get(shop.api("customers/" + customer + "/statements"))
                .then()
                .body("[0].until", equalTo(DAY.toString()))
                .extract()
                .path("[0].id");
        as(shop.office())
                .get(shop.api("statements/" + statement + ".pdf"))
                .then()
                .statusCode(200)
                .contentType("application/pdf");
        send(shop.office(), shop.api("statements"), Map.of("from", DAY.toString(), "until", from))
                .statusCode(422)
                .body("refusals.field", hasItems("until"));
    }
}
