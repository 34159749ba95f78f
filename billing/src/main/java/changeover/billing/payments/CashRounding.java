package changeover.billing.payments;

import changeover.contracts.money.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A total paid in Canadian cash goes to the nearest five cents, after the taxes, which it never changes; every other way
 * of paying is to the cent (Revenu Québec, "Calculating the Taxes"; the cent coin was withdrawn in 2013).
 */
public final class CashRounding {

    private static final BigDecimal FIVE = BigDecimal.valueOf(5);

    private CashRounding() {}

    /** 286.29 is 286.30 in cash, 286.27 is 286.25; amounts of other currencies stay as they are. */
    public static Money of(Money total) {
        if (!total.currency().getCurrencyCode().equals("CAD")) {
            return total;
        }
        long fives = BigDecimal.valueOf(total.minor())
                .divide(FIVE, 0, RoundingMode.HALF_UP)
                .longValueExact();
        return new Money(fives * 5, total.currency());
    }
}
