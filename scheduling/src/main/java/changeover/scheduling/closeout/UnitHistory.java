package changeover.scheduling.closeout;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** When tasks were done on the units of the current business's homes. */
@ApplicationScoped
public class UnitHistory {

    @Inject
    EntityManager rows;

    /** A task on a unit; of the home as a whole when the unit is null. */
    public record On(@Nullable UUID equipmentId, String taskCode) {}

    /** When each task was last done in these homes. */
    public Map<On, LocalDate> lastDone(Collection<UUID> homeIds) {
        Map<On, LocalDate> last = new HashMap<>();
        if (!homeIds.isEmpty()) {
            rows.createQuery(
                            "select equipmentId, taskCode, max(day) from TaskDone where homeId in :homes"
                                    + " group by equipmentId, taskCode",
                            Object[].class)
                    .setParameter("homes", homeIds)
                    .getResultList()
                    .forEach(row -> last.put(new On((UUID) row[0], (String) row[1]), (LocalDate) row[2]));
        }
        return last;
    }

    public Optional<LocalDate> lastDone(UUID equipmentId, String taskCode) {
        return Optional.ofNullable(rows.createQuery(
                        "select max(day) from TaskDone where equipmentId = :unit and taskCode = :task", LocalDate.class)
                .setParameter("unit", equipmentId)
                .setParameter("task", taskCode)
                .getSingleResult());
    }

    /** Everything that was done on a unit, newest first. */
    public List<TaskDone> of(UUID equipmentId) {
        return rows.createQuery("from TaskDone where equipmentId = :unit order by day desc, id desc", TaskDone.class)
                .setParameter("unit", equipmentId)
                .getResultList();
    }

    /** Everything that was done in a home, newest first. */
    public List<TaskDone> ofHome(UUID homeId) {
        return rows.createQuery("from TaskDone where homeId = :home order by day desc, id desc", TaskDone.class)
                .setParameter("home", homeId)
                .getResultList();
    }
}
