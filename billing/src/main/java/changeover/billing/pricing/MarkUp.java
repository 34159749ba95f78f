package changeover.billing.pricing;

import changeover.contracts.money.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * A part's price is its cost and so many percent more, rounded half-up to the step.
 *
 * @param item the part's code or the kind's, empty for a rule by cost
 * @param costFrom by cost: for parts that cost at least this; nought for the other scopes
 * @param percent null where the rule of this part or kind ends on that day
 * @param step what prices are rounded to: 0.01, 0.05, 1.00…
 */
public record MarkUp(
        Scope scope, String item, Money costFrom, @Nullable BigDecimal percent, Money step, LocalDate from) {

    /** Whom the rule is for; a part's own rule goes before its kind's, and that before the rule by cost. */
    public enum Scope {
        PART,
        KIND,
        COST;

        public static Scope of(String code) {
            return valueOf(code.toUpperCase(Locale.ROOT));
        }

        public String code() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    public MarkUp {
        if (!step.isPositive()) {
            throw new IllegalArgumentException("a step above nought: " + step);
        }
    }

    /** {@code 4.20} and 110 percent in steps of 0.05 are 8.80; {@code 4.25} are 8.925, so 8.95. */
    Money price(Money cost, BigDecimal more) {
        return rounded(cost.amount().multiply(more.movePointLeft(2).add(BigDecimal.ONE)), step);
    }

    /** The amount to the nearest step; half of one goes up. */
    public static Money rounded(BigDecimal amount, Money step) {
        BigDecimal steps = amount.divide(step.amount(), 0, RoundingMode.HALF_UP);
        return Money.of(steps.multiply(step.amount()), step.currency());
    }
}
