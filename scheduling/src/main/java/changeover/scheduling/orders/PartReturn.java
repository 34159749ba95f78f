package changeover.scheduling.orders;

import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What came and went back, and what the supplier said to it.
 *
 * @param to a place of ours, null for the supplier
 * @param credit what was expected; null where nothing was said
 * @param answer null while the supplier has not answered
 */
public record PartReturn(
        UUID id,
        UUID orderId,
        UUID homeId,
        String home,
        String partCode,
        Wording part,
        BigDecimal quantity,
        String supplier,
        String from,
        @Nullable String to,
        LocalDate day,
        ReturnWhy why,
        @Nullable String words,
        @Nullable Money credit,
        @Nullable Answer answer) {

    /** @param amount null where the credit was refused */
    public record Answer(
            LocalDate day, @Nullable Money amount, @Nullable String words) {}

    /** Whether the supplier still owes an answer. */
    public boolean isOpen() {
        return to == null && answer == null;
    }
}
