package changeover.billing.pricing;

import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What an agreement still gives on the day of the visit: parts up to their caps, minutes of extra work, and a discount on
 * the rest.
 *
 * @param plan the plan's name on the line's reason, or null without an agreement
 * @param parts by kind of part, what its term's cap leaves
 * @param minutes of extra work that are left
 */
public record Coverage(@Nullable Wording plan, Map<String, Cap> parts, int minutes, BigDecimal discountPercent) {

    /** @param cap what the term includes; {@code left} what earlier visits left of it */
    public record Cap(BigDecimal cap, BigDecimal left) {}

    public static final Coverage NONE = new Coverage(null, Map.of(), 0, BigDecimal.ZERO);

    BigDecimal leftOf(String partKind) {
        Cap cap = parts.get(partKind);
        return cap == null ? BigDecimal.ZERO : cap.left().max(BigDecimal.ZERO);
    }
}
