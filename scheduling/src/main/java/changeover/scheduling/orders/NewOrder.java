package changeover.scheduling.orders;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A part is ordered for a visit.
 *
 * @param equipmentId the machine it is for, where it is for one
 * @param supplier empty for whom the part is always bought from
 * @param words what else was said to the supplier
 * @param orderedOn null for today
 */
public record NewOrder(
        UUID visitId,
        @Nullable UUID equipmentId,
        String partCode,
        BigDecimal quantity,
        String supplier,
        LocalDate expectedOn,
        @Nullable String words,
        @Nullable LocalDate orderedOn) {

    /** Ordered today. */
    public NewOrder(
            UUID visitId,
            @Nullable UUID equipmentId,
            String partCode,
            BigDecimal quantity,
            String supplier,
            LocalDate expectedOn,
            @Nullable String words) {
        this(visitId, equipmentId, partCode, quantity, supplier, expectedOn, words, null);
    }
}
