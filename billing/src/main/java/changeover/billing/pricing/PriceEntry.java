package changeover.billing.pricing;

import changeover.contracts.money.Money;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** What one item costs the customer from a day on, and what it costs the business where that is known. */
public record PriceEntry(
        ItemKind kind, String code, Money price, @Nullable Money cost, LocalDate from) {}
