package changeover.billing.pricing;

import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * One line of what a visit costs, with the reason under it.
 *
 * @param item a part's code, {@code hour}, {@code visit}, or {@code promised} for the plan's own work
 * @param partKind what caps count, null for labour and travel
 * @param unit UN/ECE Recommendation 20: HUR, MIN, C62, LTR…
 * @param unitPrice null while the price book has none: such a line cannot be issued
 * @param discount taken off quantity times price, rounded half-up
 */
public record Charge(
        ItemKind kind,
        String item,
        @Nullable String partKind,
        Covered covered,
        Wording words,
        Wording why,
        BigDecimal quantity,
        String unit,
        @Nullable Money unitPrice,
        BigDecimal discountPercent,
        Money discount,
        Money net) {

    /** Whether the plan gives it, takes something off, or the customer pays it whole. */
    public enum Covered {
        INCLUDED,
        DISCOUNTED,
        BILLABLE;

        public String code() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** Nothing to pay: the plan, or our own mistake, covers it. */
    static Charge included(
            ItemKind kind,
            String item,
            @Nullable String partKind,
            Wording words,
            Wording why,
            BigDecimal quantity,
            String unit,
            Money nought) {
        return new Charge(
                kind,
                item,
                partKind,
                Covered.INCLUDED,
                words,
                why,
                written(quantity),
                unit,
                nought,
                BigDecimal.ZERO,
                nought,
                nought);
    }

    /** To pay, less the discount. Net and discount are nought while there is no price. */
    static Charge payable(
            ItemKind kind,
            String item,
            @Nullable String partKind,
            Wording words,
            Wording why,
            BigDecimal quantity,
            String unit,
            @Nullable Money unitPrice,
            BigDecimal discountPercent,
            Money nought) {
        Money gross = unitPrice == null ? nought : unitPrice.times(written(quantity));
        Money discount = gross.percent(discountPercent);
        return new Charge(
                kind,
                item,
                partKind,
                discountPercent.signum() > 0 ? Covered.DISCOUNTED : Covered.BILLABLE,
                words,
                why,
                written(quantity),
                unit,
                unitPrice,
                discountPercent,
                discount,
                gross.minus(discount));
    }

    /** Three decimals, and a fourth where there is one: a sixth of an hour. */
    private static BigDecimal written(BigDecimal quantity) {
        BigDecimal four = quantity.setScale(4, RoundingMode.HALF_UP);
        return four.stripTrailingZeros().scale() > 3 ? four : four.setScale(3, RoundingMode.UNNECESSARY);
    }
}
