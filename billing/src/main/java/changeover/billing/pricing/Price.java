package changeover.billing.pricing;

import changeover.contracts.money.Money;
import changeover.contracts.tenants.Owned;
import changeover.contracts.words.Refusal;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.Currency;
import org.jspecify.annotations.Nullable;

/** One item's price from a day on; a new price is a new row, so that the old one is never lost. */
@Entity
@Table(name = "price")
public class Price extends Owned {

    @Column(name = "item_kind")
    private String itemKind = "";

    @Column(name = "item_code")
    private String itemCode = "";

    @Column(name = "price_minor")
    private long priceMinor;

    @Column(name = "cost_minor")
    private @Nullable Long costMinor;

    private String currency = "";

    @Column(name = "valid_from")
    private LocalDate validFrom = LocalDate.EPOCH;

    /** @throws changeover.contracts.words.Refused for a negative price or an item without a code */
    static Price of(PriceEntry entry) {
        if (entry.code().isBlank()) {
            throw Refusal.of("price.item-missing").at("item").thrown();
        }
        if (entry.price().isNegative() || (entry.cost() != null && entry.cost().isNegative())) {
            throw Refusal.of("price.negative").at("price").thrown();
        }
        Price price = new Price();
        price.itemKind = entry.kind().code();
        price.itemCode = entry.code();
        price.currency = entry.price().currency().getCurrencyCode();
        price.validFrom = entry.from();
        price.says(entry);
        return price;
    }

    /** The same item and day again: the price was mistyped. */
    void says(PriceEntry entry) {
        priceMinor = entry.price().minor();
        costMinor = entry.cost() == null ? null : entry.cost().minor();
    }

    public PriceEntry entry() {
        Currency in = Currency.getInstance(currency);
        return new PriceEntry(
                ItemKind.of(itemKind),
                itemCode,
                new Money(priceMinor, in),
                costMinor == null ? null : new Money(costMinor, in),
                validFrom);
    }
}
