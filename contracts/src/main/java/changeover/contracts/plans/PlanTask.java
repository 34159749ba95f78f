package changeover.contracts.plans;

import changeover.contracts.catalogue.Cadence;
import changeover.contracts.tenants.Owned;
import jakarta.persistence.Column;
import jakarta.persistence.ConstraintMode;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.ForeignKey;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Table;
import java.util.Optional;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;

/** A task of the catalogue that a plan promises, as often as the catalogue says unless the plan says otherwise. */
@Entity
@Table(name = "plan_task")
public class PlanTask extends Owned {

    @ManyToOne(fetch = FetchType.LAZY, optional = false)
    @JoinColumn(name = "plan_id", updatable = false, foreignKey = @ForeignKey(ConstraintMode.NO_CONSTRAINT))
    private @Nullable Plan plan;

    @Column(name = "task_code", updatable = false)
    private String taskCode = "";

    @JdbcTypeCode(SqlTypes.JSON)
    private @Nullable String cadence;

    private int position;

    static PlanTask of(Plan plan, String taskCode, @Nullable Cadence cadence, int position) {
        var task = new PlanTask();
        task.plan = plan;
        task.taskCode = taskCode;
        task.promise(cadence, position);
        return task;
    }

    void promise(@Nullable Cadence newCadence, int newPosition) {
        cadence = newCadence == null ? null : newCadence.json();
        position = newPosition;
    }

    public String taskCode() {
        return taskCode;
    }

    /** The plan's own cadence; empty for the catalogue's. */
    public Optional<Cadence> cadence() {
        return Optional.ofNullable(cadence).map(Cadence::ofJson);
    }

    public int position() {
        return position;
    }
}
