package changeover.scheduling.visits;

import changeover.contracts.catalogue.Cadence;
import changeover.contracts.catalogue.History;
import changeover.contracts.catalogue.Task;
import changeover.contracts.catalogue.Who;
import java.util.UUID;

/**
 * A task that an agreement promises for one machine, with what is known of the last time.
 *
 * @param minutes planning figure
 * @param warmOnly whether its readings need warm outdoor air
 */
public record PromisedTask(
        UUID equipmentId, String taskCode, Who who, int minutes, Cadence cadence, boolean warmOnly, History history) {

    public static PromisedTask of(UUID equipmentId, Task task, History history) {
        return new PromisedTask(
                equipmentId,
                task.code(),
                task.who(),
                task.minutes(),
                task.cadence(),
                task.outdoorAtLeast() != null,
                history);
    }

    /** The same task on another machine. */
    PromisedTask on(UUID otherId) {
        return new PromisedTask(otherId, taskCode, who, minutes, cadence, warmOnly, history);
    }
}
