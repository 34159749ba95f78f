package changeover.scheduling.closeout;

import changeover.contracts.tenants.OwnedWithGivenId;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What became of a task: done, not applicable, or deferred for a reason. */
@Entity
@Table(name = "task_outcome")
public class TaskOutcome extends OwnedWithGivenId {

    @Column(name = "visit_id")
    private UUID visitId = new UUID(0, 0);

    @Column(name = "visit_task_id")
    private UUID visitTaskId = new UUID(0, 0);

    private String outcome = "";

    private @Nullable String reason;
    private @Nullable String cause;

    /** For Hibernate. */
    protected TaskOutcome() {}

    private TaskOutcome(UUID id) {
        super(id);
    }

    static TaskOutcome of(UUID id, UUID visitId, Operation.TaskAnswered answered) {
        var row = new TaskOutcome(id);
        row.visitId = visitId;
        row.visitTaskId = answered.task();
        row.outcome = answered.outcome().code();
        row.reason = answered.reason();
        row.cause = answered.cause();
        return row;
    }

    public UUID visitId() {
        return visitId;
    }

    public UUID visitTaskId() {
        return visitTaskId;
    }

    /** done, not_applicable or deferred. */
    public String outcome() {
        return outcome;
    }

    public Optional<String> reason() {
        return Optional.ofNullable(reason);
    }
}
