package changeover.scheduling.orders;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import changeover.scheduling.visits.VisitKind;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.math.BigDecimal;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** What came and was wrong or not needed goes back, and the supplier answers, to the cent. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class PartReturnsTest extends AWaitingVisit {

    @Test
    void what_is_wrong_goes_back_and_its_credit_comes() {
        open(VisitKind.RETURN);
        UUID motor = order(MOTOR, TWO, 0);
        run(() -> orders.arrive(UUID.randomUUID(), motor, TWO, van));
        UUID second = shop.in(tenant, () -> orders.secondVisit(motor, 60, null));
        run(() ->
                assertEquals(VisitKind.RETURN, visits.find(second).orElseThrow().kind()));
        Money credit = Money.of("212.40", "CAD");
        UUID back = UUID.randomUUID();
        refused("part-order.more-than-came", () -> returns.giveBack(back, back(motor, "3", van, null, credit)));
        refused("stock.short", () -> returns.giveBack(back, back(motor, "1", shelf, null, credit)));
        run(() -> returns.giveBack(back, back(motor, "1", van, null, credit)));
        run(() -> returns.giveBack(back, back(motor, "1", van, null, credit)));
        held(van, MOTOR, "1");
        run(() -> returns.giveBack(UUID.randomUUID(), back(motor, "1", van, shelf, null)));
        held(van, MOTOR, "0");
        held(shelf, MOTOR, "1");
        standing(motor, OrderStanding.GONE_BACK, NextStep.NOTHING);
        run(() -> assertEquals(
                List.of(back), returns.open().stream().map(PartReturn::id).toList()));
        refused("part-order.credit-of-nothing", () -> returns.answer(back, today.day(), Money.of("0.00", "CAD"), null));
        refused("text.missing", () -> returns.answer(back, today.day(), null, null));
        run(() -> returns.answer(back, today.day(), Money.of("180.00", "CAD"), "Less 15 % for handling"));
        refused("part-order.answered", () -> returns.answer(back, today.day(), credit, null));
        run(() -> {
            assertEquals(List.of(), returns.open());
            assertEquals(2, returns.ofOrder(motor).size());
            assertEquals(
                    Money.of("180.00", "CAD"),
                    returns.find(back).orElseThrow().answer().amount());
        });
    }

    private static NewReturn back(UUID order, String quantity, UUID from, UUID to, Money credit) {
        return new NewReturn(order, new BigDecimal(quantity), from, to, ReturnWhy.WRONG, null, credit);
    }
}
