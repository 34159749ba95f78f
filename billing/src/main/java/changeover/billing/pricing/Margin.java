package changeover.billing.pricing;

import changeover.contracts.money.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/** A margin is a part of the price, never of the cost: 60.00 sold at 100.00 has a margin of 40 % and a mark-up of 66.7 %. */
public final class Margin {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private Margin() {}

    /**
     * The price at which the cost leaves so much of the price, half-up to the cent.
     *
     * @param percent of the price, below a hundred
     * @throws IllegalArgumentException for a hundred or more: no price is high enough
     */
    public static Money price(Money cost, BigDecimal percent) {
        if (percent.compareTo(HUNDRED) >= 0) {
            throw new IllegalArgumentException("A margin is less than 100 % of the price, not " + percent + ".");
        }
        BigDecimal left = HUNDRED.subtract(percent);
        int digits = cost.currency().getDefaultFractionDigits();
        BigDecimal price = cost.amount().multiply(HUNDRED).divide(left, digits, RoundingMode.HALF_UP);
        return Money.of(price, cost.currency());
    }

    /** What of the price is left, in percent with one decimal, half-up; empty where nothing is asked. */
    public static Optional<BigDecimal> of(Money price, Money cost) {
        return price.isZero()
                ? Optional.empty()
                : Optional.of(
                        price.minus(cost).amount().multiply(HUNDRED).divide(price.amount(), 1, RoundingMode.HALF_UP));
    }
}
