package changeover.scheduling.orders;

import changeover.contracts.money.Money;
import java.math.BigDecimal;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What came goes back.
 *
 * @param from where it lies
 * @param to a place of ours, the same where it simply stays; null for the supplier
 * @param credit what the supplier should credit; null where nothing was said, and from nobody else
 */
public record NewReturn(
        UUID orderId,
        BigDecimal quantity,
        UUID from,
        @Nullable UUID to,
        ReturnWhy why,
        @Nullable String words,
        @Nullable Money credit) {}
