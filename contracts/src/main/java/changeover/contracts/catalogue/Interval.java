package changeover.contracts.catalogue;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A machine's own label outranks the catalogue: another cadence for a task, for one machine or for the whole business,
 * with why.
 *
 * @param equipmentId the one machine; null for the whole business
 * @param basis what it rests on, "label on the machine"
 * @param decided by whom and when, where a person decided for one machine; else null
 */
public record Interval(
        String taskCode,
        @Nullable UUID equipmentId,
        Cadence cadence,
        String basis,
        @Nullable String source,
        @Nullable Decided decided) {

    /** Who decided, by name, and on which day. */
    public record Decided(String by, LocalDate on) {}

    public Interval(
            String taskCode, @Nullable UUID equipmentId, Cadence cadence, String basis, @Nullable String source) {
        this(taskCode, equipmentId, cadence, basis, source, null);
    }

    /** The task as it is promised for this machine: by its own interval, else the business's, else the catalogue's. */
    public static Task over(Task task, @Nullable UUID equipmentId, Collection<Interval> intervals) {
        return intervals.stream()
                .filter(interval -> interval.taskCode.equals(task.code()))
                .filter(interval -> interval.equipmentId == null || interval.equipmentId.equals(equipmentId))
                .min(Comparator.comparing(interval -> interval.equipmentId == null ? 1 : 0))
                .map(interval -> task.withCadence(interval.cadence, interval.basis, interval.source))
                .orElse(task);
    }
}
