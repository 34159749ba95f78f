package changeover.scheduling.visits;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A household did its own part of the year and said so: what counts from the last time begins anew on that day.
 *
 * @param act {@code do}, {@code check} or {@code replace}
 */
public record HouseholdTaskDone(
        UUID taskId,
        UUID homeId,
        @Nullable UUID equipmentId,
        String taskCode,
        String act,
        LocalDate dueOn,
        LocalDate day,
        String by) {}
