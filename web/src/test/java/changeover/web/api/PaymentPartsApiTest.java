package changeover.web.api;

import static changeover.web.AShop.as;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.PostgresForTests;
import changeover.web.AShop;
import changeover.web.office.ABilledShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;

/** The parts that a payment names fit, or nothing is taken. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class PaymentPartsApiTest {

    @Inject
    ABilledShop billed;

    private record Owing(AShop.Shop shop, String customer, String invoice, BigDecimal open) {

        static Owing of(AShop.Shop shop) {
            Map<String, Object> one = as(shop.owner())
                    .get(shop.api("invoices"))
                    .then()
                    .extract()
                    .path("find { it.state in ['open', 'overdue'] }");
            return new Owing(
                    shop,
                    one.get("customer").toString(),
                    one.get("id").toString(),
                    new BigDecimal(((Map<?, ?>) one.get("open")).get("amount").toString()));
        }

        Map<String, Object> part(String amount) {
            return Map.of("invoice", invoice, "amount", amount);
        }

        ValidatableResponse pay(String amount, String way, List<Map<String, Object>> parts) {
            return send(
                    shop.owner(),
                    shop.api("payments"),
                    Map.of("customer", customer, "amount", amount, "way", way, "parts", parts));
        }

        void refused(String sentence, String amount, List<Map<String, Object>> parts) {
            pay(amount, "card", parts)
                    .statusCode(422)
                    .body("refusals[0].field", equalTo("parts"))
                    .body("refusals[0].sentence", containsString(sentence));
        }
    }

    @Test
    void a_part_that_does_not_fit_is_refused_and_nothing_is_taken() {
        for (boolean french : new boolean[] {false, true}) {
            var shop = billed.open("CA-ON", french ? "fr" : "en");
            Owing owing = Owing.of(shop);
            String beyond = owing.open().add(new BigDecimal("0.01")).toPlainString();
            String whole = owing.open().toPlainString();
            owing.refused(french ? "Les parts font" : "The parts come to", "10.00", List.of(owing.part("20.00")));
            owing.refused(french ? "à payer sur" : "no more of it", beyond, List.of(owing.part(beyond)));
            owing.refused(
                    french ? "une seule fois" : "named once", "10.00", List.of(owing.part("5.00"), owing.part("5.00")));
            owing.refused(french ? "montant" : "amount above nought", "10.00", List.of(owing.part("0.00")));
            assertEquals(owing, Owing.of(shop));
            owing.pay("12.00", "card", List.of(owing.part("10.00")))
                    .statusCode(201)
                    .body("credit.amount", equalTo("2.00"));
            owing.pay(whole, "card", List.of()).statusCode(201);
            owing.refused(french ? "n’est plus à payer" : "is no longer open", "2.00", List.of(owing.part("2.00")));
            owing.pay("2.00", "card", List.of()).statusCode(201);
        }
    }

    @Test
    void cash_rounded_to_five_cents_pays_the_parts_to_the_cent() {
        var shop = billed.open("CA-ON", "en");
        Owing owing = Owing.of(shop);
        owing.pay("10.00", "cash", List.of(owing.part("10.02"))).statusCode(201);
        assertEquals(
                owing.open().subtract(new BigDecimal("10.02")), Owing.of(shop).open());
        owing.pay("10.00", "cash", List.of(owing.part("10.03"))).statusCode(422);
    }

    @Test
    void of_three_who_pay_a_document_in_full_at_once_one_does() throws Exception {
        var shop = billed.open("CA-ON", "en");
        Owing owing = Owing.of(shop);
        String whole = owing.open().toPlainString();
        Callable<Integer> pay = () ->
                owing.pay(whole, "card", List.of(owing.part(whole))).extract().statusCode();
        List<Integer> said = new ArrayList<>();
        try (var hands = Executors.newFixedThreadPool(3)) {
            for (Future<Integer> one : hands.invokeAll(Collections.nCopies(3, pay))) {
                said.add(one.get());
            }
        }
        assertEquals(List.of(201, 422, 422), said.stream().sorted().toList());
    }
}
