package changeover.billing.payments;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.money.Money;
import org.junit.jupiter.api.Test;

/** Revenu Québec, "Calculating the Taxes": cash totals go to the nearest five cents after the taxes are computed. */
class CashRoundingOutsideTest {

    @Test
    void to_the_nearest_five_cents() {
        check("286.29", "286.30");
        check("286.27", "286.25");
        check("286.25", "286.25");
        check("0.02", "0.00");
        check("0.03", "0.05");
        check("10.07", "10.05");
        check("10.08", "10.10");
    }

    @Test
    void other_money_keeps_its_cents() {
        assertEquals(Money.of("10.07", "USD"), CashRounding.of(Money.of("10.07", "USD")));
    }

    private static void check(String total, String cash) {
        assertEquals(Money.of(cash, "CAD"), CashRounding.of(Money.of(total, "CAD")));
    }
}
