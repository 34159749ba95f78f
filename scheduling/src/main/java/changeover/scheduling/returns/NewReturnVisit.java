package changeover.scheduling.returns;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * We go back to what a visit did.
 *
 * @param partCode the part it is about, of those the visit used; null for none
 * @param equipmentId the machine it is about; null for none
 * @param words what the household says
 * @param last the day until which somebody comes
 */
public record NewReturnVisit(
        UUID answersId,
        ReturnCause cause,
        @Nullable String partCode,
        @Nullable UUID equipmentId,
        String words,
        int minutes,
        LocalDate last) {}
