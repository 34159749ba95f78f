package changeover.scheduling.visits;

import changeover.contracts.calendar.Term;
import changeover.contracts.catalogue.Task;
import changeover.contracts.customers.ShutTimes;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/**
 * An agreement whose year has no visits yet.
 *
 * @param visits how many its plan sells
 * @param bases what a cadence rests on, where it is not the catalogue's
 * @param shut when its home is
 */
record YearToPlan(
        UUID agreementId,
        UUID homeId,
        Term term,
        int visits,
        List<PromisedTask> tasks,
        Map<UnitTask, String> bases,
        ShutTimes shut) {

    /** One task on one machine. */
    record UnitTask(UUID unit, String task) {}

    YearToPlan {
        tasks = List.copyOf(tasks);
        bases = Map.copyOf(bases);
    }

    String basis(UUID unit, Task task) {
        return bases.isEmpty() ? task.basis() : bases.getOrDefault(new UnitTask(unit, task.code()), task.basis());
    }
}
