package changeover.scheduling.closeout;

import changeover.contracts.tenants.Owned;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A task was done on a unit on a day, which the next season counts from. */
@Entity
@Table(name = "unit_history")
public class TaskDone extends Owned {

    @Column(name = "home_id")
    private UUID homeId = new UUID(0, 0);

    @Column(name = "equipment_id")
    private @Nullable UUID equipmentId;

    @Column(name = "task_code")
    private String taskCode = "";

    private LocalDate day = LocalDate.EPOCH;

    @Column(name = "technician_id")
    private @Nullable UUID technicianId;

    @Column(name = "visit_id")
    private @Nullable UUID visitId;

    @Column(name = "visit_task_id")
    private @Nullable UUID visitTaskId;

    static TaskDone at(VisitAtHand visit, TaskAtHand task, UUID technician, LocalDate day) {
        var row = new TaskDone();
        row.homeId = visit.homeId();
        row.equipmentId = task.equipment();
        row.taskCode = task.code();
        row.day = day;
        row.technicianId = technician;
        row.visitId = visit.id();
        row.visitTaskId = task.id();
        return row;
    }

    public UUID homeId() {
        return homeId;
    }

    public Optional<UUID> equipmentId() {
        return Optional.ofNullable(equipmentId);
    }

    public String taskCode() {
        return taskCode;
    }

    public LocalDate day() {
        return day;
    }

    public Optional<UUID> technicianId() {
        return Optional.ofNullable(technicianId);
    }

    public Optional<UUID> visitId() {
        return Optional.ofNullable(visitId);
    }

    public Optional<UUID> visitTaskId() {
        return Optional.ofNullable(visitTaskId);
    }
}
