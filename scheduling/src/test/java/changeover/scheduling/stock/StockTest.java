package changeover.scheduling.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import changeover.contracts.PostgresForTests;
import changeover.contracts.words.Refused;
import changeover.contracts.words.Wording;
import changeover.scheduling.Shop;
import changeover.scheduling.stock.KnownPart.Amount;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class StockTest {

    private static final List<String> PARTS = List.of("a", "b", "c");

    @Inject
    Shop shop;

    @Inject
    Stock stock;

    @Inject
    StockPlaces places;

    @Inject
    Parts parts;

    private UUID shelf = new UUID(0, 0);
    private UUID van = new UUID(0, 0);

    private UUID open() {
        UUID tenant = shop.open("CA-ON");
        run(tenant, () -> {
            PARTS.forEach(code -> parts.keep(new KnownPart(code, new Wording(code, code), "H87", null, null)));
            shelf = places.shelf().orElseThrow().id();
            van = places.van(Shop.TECHNICIAN).orElseThrow().id();
        });
        return tenant;
    }

    private void run(UUID tenant, Runnable work) {
        shop.in(tenant, () -> {
            work.run();
            return true;
        });
    }

    private static List<Amount> of(String part, String quantity) {
        return List.of(new Amount(part, new BigDecimal(quantity)));
    }

    @Test
    void parts_come_go_and_are_counted_as_movements() {
        UUID tenant = open();
        UUID receipt = UUID.randomUUID();
        run(tenant, () -> {
            stock.receive(receipt, shelf, of("a", "10"), "delivery 17");
            stock.receive(receipt, shelf, of("a", "10"), "delivery 17");
            stock.move(UUID.randomUUID(), shelf, van, of("a", "4"), null);
            stock.count(UUID.randomUUID(), van, of("a", "3"), "yearly count");
            assertEquals(Map.of("a", new BigDecimal("6")), stock.onHand(shelf));
            assertEquals(Map.of("a", new BigDecimal("3")), stock.onHand(van));
            assertEquals(2, stock.movements(van, 10).size());
        });
    }

    @Test
    void below_zero_only_for_a_named_reason() {
        UUID tenant = open();
        Refused refused = assertThrows(
                Refused.class, () -> run(tenant, () -> stock.move(UUID.randomUUID(), shelf, van, of("b", "1"), null)));
        assertEquals("stock.short", refused.first().code());
        run(tenant, () -> {
            stock.move(UUID.randomUUID(), shelf, van, of("b", "1"), "bought on the way");
            assertEquals(new BigDecimal("-1"), stock.onHand(shelf, "b"));
        });
    }

    @Test
    void what_cannot_be_is_refused() {
        UUID tenant = open();
        check(tenant, "stock.part-not-found", () -> stock.receive(UUID.randomUUID(), shelf, of("zzz", "1"), null));
        check(tenant, "stock.quantity", () -> stock.receive(UUID.randomUUID(), shelf, of("a", "-1"), null));
        check(tenant, "stock.quantity", () -> stock.receive(UUID.randomUUID(), shelf, of("a", "0"), null));
        check(tenant, "stock.quantity", () -> stock.receive(UUID.randomUUID(), shelf, of("a", "1e99"), null));
        check(tenant, "stock.quantity", () -> stock.receive(UUID.randomUUID(), shelf, of("a", "1.00001"), null));
        check(tenant, "stock.nothing", () -> stock.receive(UUID.randomUUID(), shelf, List.of(), null));
        check(tenant, "stock.same-place", () -> stock.move(UUID.randomUUID(), van, van, of("a", "1"), null));
        check(tenant, "stock.count-why", () -> stock.count(UUID.randomUUID(), van, of("a", "1"), " "));
    }

    private void check(UUID tenant, String code, Runnable act) {
        assertEquals(
                code,
                assertThrows(Refused.class, () -> run(tenant, act)).first().code());
    }

    @Test
    void the_sum_is_always_what_came_less_what_went() {
        UUID tenant = open();
        Random random = new Random(7);
        Map<String, BigDecimal> expected = new HashMap<>();
        run(tenant, () -> {
            for (int i = 0; i < 300; i++) {
                String part = PARTS.get(random.nextInt(3));
                BigDecimal quantity = BigDecimal.valueOf(random.nextInt(1, 500), 2);
                List<Amount> amounts = List.of(new Amount(part, quantity));
                switch (random.nextInt(3)) {
                    case 0 -> {
                        stock.receive(UUID.randomUUID(), shelf, amounts, null);
                        expected.merge("shelf " + part, quantity, BigDecimal::add);
                    }
                    case 1 -> {
                        stock.move(UUID.randomUUID(), shelf, van, amounts, "needed");
                        expected.merge("shelf " + part, quantity.negate(), BigDecimal::add);
                        expected.merge("van " + part, quantity, BigDecimal::add);
                    }
                    default -> {
                        stock.count(UUID.randomUUID(), van, amounts, "counted");
                        expected.put("van " + part, quantity);
                    }
                }
            }
            for (String part : PARTS) {
                assertEquals(
                        0,
                        expected.getOrDefault("shelf " + part, BigDecimal.ZERO).compareTo(stock.onHand(shelf, part)));
                assertEquals(
                        0, expected.getOrDefault("van " + part, BigDecimal.ZERO).compareTo(stock.onHand(van, part)));
            }
        });
    }

    @Test
    void the_van_takes_what_the_shelf_has_and_the_rest_is_bought() {
        VanList list = VanList.of(
                Map.of("a", new BigDecimal(5), "b", BigDecimal.ONE),
                Map.of("a", BigDecimal.ONE, "b", BigDecimal.TEN),
                Map.of("a", BigDecimal.TWO));
        assertEquals(
                List.of(
                        new VanList.Line("a", new BigDecimal(5), BigDecimal.ONE, BigDecimal.TWO, BigDecimal.TWO),
                        new VanList.Line("b", BigDecimal.ONE, BigDecimal.TEN, BigDecimal.ZERO, BigDecimal.ZERO)),
                list.lines());
        assertEquals(1, list.toLoad().size());
        assertEquals(1, list.toBuy().size());
    }
}
