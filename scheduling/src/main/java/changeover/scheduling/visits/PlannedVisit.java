package changeover.scheduling.visits;

import changeover.contracts.calendar.Window;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A visit keeps all its promises on any day of its window, and is only as long as their work.
 *
 * @param pinned the visit it stands for when that one has its day already; null for a new one
 * @param tasks empty only where the plan sells a visit for which nothing is promised
 */
public record PlannedVisit(@Nullable UUID pinned, Window window, List<Promise> tasks) {

    public PlannedVisit {
        tasks = List.copyOf(tasks);
    }

    public Optional<UUID> pinnedVisit() {
        return Optional.ofNullable(pinned);
    }

    /** Planning minutes on site. */
    public int minutes() {
        return tasks.stream().mapToInt(Promise::minutes).sum();
    }
}
