package changeover.contracts.catalogue;

import changeover.contracts.words.Checks;
import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The intervals by which the current business outranks the catalogue, for all its machines or for one. */
@ApplicationScoped
public class OwnIntervals {

    @Inject
    EntityManager rows;

    @Inject
    OwnCatalogue catalogue;

    public List<Interval> all() {
        return catalogue.intervals();
    }

    /** Writes the interval of a task for a machine, or for the whole business, over the one that stood there. */
    public void keep(Interval interval) {
        var checks = new Checks();
        if (catalogue.catalogue().findTask(interval.taskCode()).isEmpty()) {
            checks.refuse("taskCode", Refusal.of("own-interval.task-unknown"));
        }
        checks.line("basis", interval.basis());
        checks.note("source", interval.source());
        Interval.Decided decided = interval.decided();
        checks.optionalLine("by", decided == null ? null : decided.by());
        checks.orRefuse();
        rows.createNativeQuery("""
                        insert into own_interval (task_code, equipment_id, cadence, basis, source, decided_by, decided_on)
                        values (:task, cast(:unit as uuid), cast(:cadence as jsonb), :basis, cast(:source as text),
                          cast(:by as text), cast(:on as date))
                        on conflict (tenant_id, task_code, equipment_id) do update set cadence = excluded.cadence,
                          basis = excluded.basis, source = excluded.source, decided_by = excluded.decided_by,
                          decided_on = excluded.decided_on, version = own_interval.version + 1
                        """)
                .setParameter("task", interval.taskCode())
                .setParameter("unit", text(interval.equipmentId()))
                .setParameter("cadence", interval.cadence().json())
                .setParameter("basis", interval.basis())
                .setParameter("source", interval.source())
                .setParameter("by", decided == null ? null : decided.by().strip())
                .setParameter("on", decided == null ? null : decided.on().toString())
                .executeUpdate();
    }

    /** Back to what outranked before; false when nothing of the kind stood there. */
    public boolean forget(String taskCode, @Nullable UUID equipmentId) {
        return rows.createNativeQuery("""
                                delete from own_interval where task_code = :task
                                   and equipment_id is not distinct from cast(:unit as uuid)
                                """)
                        .setParameter("task", taskCode)
                        .setParameter("unit", text(equipmentId))
                        .executeUpdate()
                > 0;
    }

    private static @Nullable String text(@Nullable UUID id) {
        return id == null ? null : id.toString();
    }
}
