package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.PostgresForTests;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the office ticks is paid, and nothing else in its place. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class ChosenDocumentsTest {

    static final LocalDate DAY = LocalDate.now(ZoneId.of("America/Toronto"));

    @Inject
    ABilledShop billed;

    @Test
    void a_ticked_document_is_paid_though_the_money_came_the_day_before_it() {
        for (boolean french : new boolean[] {false, true}) {
            var shop = billed.open("CA-ON", french ? "fr" : "en");
            Map<String, Object> invoice = open(shop).getLast();
            String payments = shop.at("money/customers/" + invoice.get("customer") + "/payments");
            BigDecimal before = amount(invoice);
            Map<String, String> form = Map.of(
                    "day",
                    DAY.minusDays(1).toString(),
                    "amount",
                    "20.00",
                    "way",
                    "cheque",
                    "invoice",
                    invoice.get("id").toString());
            post(shop.office(), payments, form).statusCode(303);
            assertEquals(
                    before.subtract(new BigDecimal("20.00")), amount(open(shop).getLast()));
            post(
                            shop.office(),
                            payments,
                            Map.of(
                                    "day",
                                    DAY.toString(),
                                    "amount",
                                    "20.00",
                                    "way",
                                    "cheque",
                                    "invoice",
                                    UUID.randomUUID().toString()))
                    .statusCode(422)
                    .body(containsString(french ? "n’est plus à payer" : "is no longer open"));
            assertEquals(
                    before.subtract(new BigDecimal("20.00")), amount(open(shop).getLast()));
        }
    }

    @Test
    void of_two_who_tick_the_same_document_at_once_one_is_told_that_it_is_no_longer_open() throws Exception {
        var shop = billed.open("CA-ON", "en");
        for (Map<String, Object> invoice : open(shop)) {
            String payments = shop.at("money/customers/" + invoice.get("customer") + "/payments");
            Map<String, String> form = Map.of(
                    "day",
                    DAY.toString(),
                    "amount",
                    amount(invoice).toPlainString(),
                    "way",
                    "card",
                    "invoice",
                    invoice.get("id").toString());
            List<Callable<Integer>> presses = Stream.of(shop.owner(), shop.office(), shop.owner(), shop.office())
                    .<Callable<Integer>>map(
                            who -> () -> post(who, payments, form).extract().statusCode())
                    .toList();
            List<Integer> said = new ArrayList<>();
            try (var hands = Executors.newFixedThreadPool(presses.size())) {
                for (Future<Integer> one : hands.invokeAll(presses)) {
                    said.add(one.get());
                }
            }
            assertEquals(List.of(303, 422, 422, 422), said.stream().sorted().toList());
        }
        assertEquals(List.of(), open(shop));
    }

    private static List<Map<String, Object>> open(AShop.Shop shop) {
        return as(shop.owner())
                .get(shop.api("invoices"))
                .then()
                .extract()
                .path("findAll { it.state in ['open', 'overdue'] }");
    }

    @SuppressWarnings("unchecked")
    private static BigDecimal amount(Map<String, Object> invoice) {
        return new BigDecimal(
                ((Map<String, Object>) invoice.get("open")).get("amount").toString());
    }
}
