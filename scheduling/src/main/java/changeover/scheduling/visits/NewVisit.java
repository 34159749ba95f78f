package changeover.scheduling.visits;

import changeover.contracts.calendar.Window;
import changeover.contracts.words.Wording;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A visit to be made that no plan promised.
 *
 * @param agreementId the agreement it falls under, null when none does
 * @param answersId the visit whose open matter it answers
 * @param minutes planned minutes on site; nought for the sum of its tasks
 * @param tasks its checklist; may be empty for a look at a trouble
 */
public record NewVisit(
        UUID homeId,
        @Nullable UUID agreementId,
        VisitKind kind,
        Window window,
        int minutes,
        @Nullable UUID answersId,
        @Nullable String note,
        List<NewTask> tasks) {

    public NewVisit {
        tasks = List.copyOf(tasks);
    }

    /** A line of its checklist: a task of the catalogue on one machine, and why it is there. */
    public record NewTask(@Nullable UUID equipmentId, String taskCode, Wording reason) {}
}
