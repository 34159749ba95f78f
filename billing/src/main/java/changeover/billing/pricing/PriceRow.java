package changeover.billing.pricing;

import changeover.contracts.money.Money;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A price as it was written: a figure, or for a part its cost alone, and then the mark-up rule of the day makes the price.
 *
 * @param partKind what the part is of (filter, pad…), for the rules by kind; null for anything else
 */
public record PriceRow(
        ItemKind kind,
        String code,
        @Nullable String partKind,
        @Nullable Money price,
        @Nullable Money cost,
        LocalDate from) {

    /** The item, whatever the day. */
    public record Item(ItemKind kind, String code) {}

    /** The same at another cost. */
    public PriceRow costing(@Nullable Money otherCost) {
        return new PriceRow(kind, code, partKind, price, otherCost, from);
    }

    String currency() {
        Money any = price == null ? cost : price;
        if (any == null) {
            throw new IllegalStateException("neither price nor cost of " + code);
        }
        return any.currency().getCurrencyCode();
    }

    public Item item() {
        return new Item(kind, code);
    }
}
