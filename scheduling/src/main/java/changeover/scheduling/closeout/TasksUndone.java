package changeover.scheduling.closeout;

import java.util.Set;
import java.util.UUID;

/**
 * Of a closed visit it was said by mistake that tasks were done: an amendment took it back.
 *
 * @param tasks the visit's lines; never empty
 */
public record TasksUndone(UUID visitId, Set<UUID> tasks) {

    public TasksUndone {
        tasks = Set.copyOf(tasks);
    }
}
