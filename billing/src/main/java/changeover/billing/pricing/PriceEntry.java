package changeover.billing.pricing;

import changeover.contracts.money.Money;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What one item costs the customer from a day on, and what it costs the business where that is known.
 *
 * @param by the rule that made the price of the cost; null where a person wrote the price
 */
public record PriceEntry(
        ItemKind kind,
        String code,
        Money price,
        @Nullable Money cost,
        LocalDate from,
        @Nullable MarkUp by) {

    /** The item, whatever the day. */
    public PriceRow.Item item() {
        return new PriceRow.Item(kind, code);
    }

    /** A price that a person wrote. */
    public PriceEntry(ItemKind kind, String code, Money price, @Nullable Money cost, LocalDate from) {
        this(kind, code, price, cost, from, null);
    }
}
