package changeover.billing.pricing;

import changeover.contracts.money.Money;
import changeover.contracts.tenants.Owned;
import changeover.contracts.words.Refusal;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * One item's price from a day on, or a part's cost that a mark-up makes a price of; a new one is a new row, so that the old
 * one is never lost.
 */
@Entity
@Table(name = "price")
public class Price extends Owned {

    @Column(name = "item_kind")
    private String itemKind = "";

    @Column(name = "item_code")
    private String itemCode = "";

    @Column(name = "price_minor")
    private @Nullable Long priceMinor;

    @Column(name = "cost_minor")
    private @Nullable Long costMinor;

    private String currency = "";

    @Column(name = "valid_from")
    private LocalDate validFrom = LocalDate.EPOCH;

    /** @throws changeover.contracts.words.Refused for a negative price, an item without a code, or neither price nor cost */
    static Price of(PriceRow row) {
        if (row.code().isBlank()) {
            throw Refusal.of("price.item-missing").at("item").thrown();
        }
        if (isNegative(row.price()) || isNegative(row.cost())) {
            throw Refusal.of("price.negative").at("price").thrown();
        }
        Price price = new Price();
        price.itemKind = row.kind().code();
        price.itemCode = row.code();
        price.validFrom = row.from();
        price.says(row);
        return price;
    }

    /** The same item and day again: the price was mistyped. */
    void says(PriceRow row) {
        Money any = row.price() == null ? row.cost() : row.price();
        if (any == null || (row.price() == null && row.kind() != ItemKind.PART)) {
            throw Refusal.of("price.or-cost").at("price").thrown();
        }
        priceMinor = row.price() == null ? null : row.price().minor();
        costMinor = row.cost() == null ? null : row.cost().minor();
        currency = any.currency().getCurrencyCode();
    }

    private static boolean isNegative(@Nullable Money amount) {
        return amount != null && amount.isNegative();
    }
}
