package changeover.scheduling.visits;

import changeover.contracts.calendar.Window;
import java.time.LocalDate;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A visit of a year under way as it stands.
 *
 * @param day on which it was or is to be made; null while it has none
 * @param begun whether it ended, a partner has it or something was said about it already: then nothing of it changes any
 *     more
 */
record StandingVisit(UUID id, Window window, @Nullable LocalDate day, boolean begun, List<StandingTask> tasks) {

    /**
     * A task of it, the look-over aside.
     *
     * @param putOff whether it joined this visit because it was put off elsewhere
     */
    record StandingTask(UUID id, Promise promise, boolean putOff) {}

    StandingVisit {
        tasks = List.copyOf(tasks);
    }

    /** Whether it may be laid out anew on a day: nobody has a day for it, and it is not overdue with its work. */
    boolean isFree(LocalDate today) {
        return !begun && day == null && (tasks.isEmpty() || !isOver(today));
    }

    /** Whether its last day has passed. */
    boolean isOver(LocalDate today) {
        return !today.isBefore(window.until());
    }

    /** As the plan sees it when it is not to be moved; work comes to it from tomorrow on. */
    Pin pinned(LocalDate today) {
        LocalDate on = day == null ? window.last() : day;
        return new Pin(
                id,
                on,
                !begun && on.isAfter(today),
                tasks.stream().map(StandingTask::promise).toList());
    }

    /** The rows of the tasks by their promises, each promise itself, not its like. */
    static Map<Promise, UUID> rows(List<StandingVisit> visits) {
        Map<Promise, UUID> rows = new IdentityHashMap<>();
        visits.forEach(visit -> visit.tasks.forEach(task -> rows.put(task.promise, task.id)));
        return rows;
    }
}
