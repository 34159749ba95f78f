package changeover.scheduling.visits;

import changeover.contracts.calendar.Window;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Wording;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What a household did itself is written once, with the day and whoever did it; said again it changes nothing. */
@ApplicationScoped
public class HouseholdTasks {

    @Inject
    EntityManager rows;

    @Inject
    Event<HouseholdTaskDone> done;

    /** A household's own task that nobody has written as done. */
    public record Open(UUID id, UUID homeId, @Nullable UUID equipmentId, String act, LocalDate dueOn) {}

    /** Of the whole business, what was due by a day and is not written as done, the earliest first. */
    public List<Open> openBy(LocalDate day) {
        List<Open> open = new ArrayList<>();
        for (Object one : rows.createNativeQuery("""
                        select id, home_id, equipment_id, act, due_on from household_task
                         where tenant_id = current_tenant() and done_on is null and due_on <= :day
                         order by due_on, id""", Tuple.class)
                .setParameter("day", day)
                .getResultList()) {
            Tuple row = (Tuple) one;
            open.add(new Open(
                    row.get(0, UUID.class),
                    row.get(1, UUID.class),
                    row.get(2, UUID.class),
                    row.get(3, String.class),
                    row.get(4, LocalDate.class)));
        }
        return open;
    }

    /**
     * What a household does itself, as it is listed.
     *
     * @param machine empty where the task is for the home as a whole
     * @param doneBy empty while it is not done
     */
    public record Listed(
            UUID id,
            Wording wording,
            String machine,
            LocalDate dueOn,
            @Nullable LocalDate doneOn,
            String doneBy) {}

    /** A home's own tasks of these days, the earliest first. */
    public List<Listed> ofHome(UUID homeId, Window days) {
        List<Listed> listed = new ArrayList<>();
        for (Object one : rows.createNativeQuery("""
                        select t.id, t.wording_en, t.wording_fr, coalesce(q.name, '') as machine, t.due_on, t.done_on,
                          coalesce(t.done_by, '') as done_by
                        from household_task t
                        left join equipment q on q.tenant_id = t.tenant_id and q.id = t.equipment_id
                         where t.tenant_id = current_tenant() and t.home_id = :home
                           and t.due_on >= :from and t.due_on < :until
                         order by t.due_on, t.id""", Tuple.class)
                .setParameter("home", homeId)
                .setParameter("from", days.from())
                .setParameter("until", days.until())
                .getResultList()) {
            Tuple row = (Tuple) one;
            listed.add(new Listed(
                    row.get("id", UUID.class),
                    new Wording(row.get("wording_en", String.class), row.get("wording_fr", String.class)),
                    row.get("machine", String.class),
                    row.get("due_on", LocalDate.class),
                    row.get("done_on", LocalDate.class),
                    row.get("done_by", String.class)));
        }
        return listed;
    }

    /** Whether the home has such a task. */
    public boolean isOf(UUID homeId, UUID taskId) {
        return !rows.createNativeQuery("""
                        select id from household_task
                         where tenant_id = current_tenant() and id = :task and home_id = :home""", UUID.class)
                .setParameter("task", taskId)
                .setParameter("home", homeId)
                .getResultList()
                .isEmpty();
    }

    /**
     * @param by who did it, by name
     * @throws changeover.contracts.words.Refused for a task that this home does not have
     */
    public void done(UUID homeId, UUID taskId, LocalDate day, String by) {
        if (by.isBlank()) {
            throw Refusal.of("household.says-who").at("by").thrown();
        }
        Tuple task = task(homeId, taskId)
                .orElseThrow(() -> Refusal.of("household.unknown").thrown());
        if (task.get("done_on") != null) {
            return;
        }
        rows.createNativeQuery("""
                        update household_task set done_on = :day, done_by = :by
                         where tenant_id = current_tenant() and id = :task and home_id = :home""")
                .setParameter("day", day)
                .setParameter("by", by.strip())
                .setParameter("task", taskId)
                .setParameter("home", homeId)
                .executeUpdate();
        UUID unit = task.get("equipment_id", UUID.class);
        String code = task.get("task_code", String.class);
        String act = task.get("act", String.class);
        if (!act.equals("check")) {
            count(homeId, unit, code, day);
        }
        done.fire(new HouseholdTaskDone(
                taskId, homeId, unit, code, act, task.get("due_on", LocalDate.class), day, by.strip()));
    }

    /** The next term counts from the day on which it was done, as from a technician's. */
    public void count(UUID homeId, @Nullable UUID unit, String code, LocalDate day) {
        rows.createNativeQuery("""
                        insert into unit_history (home_id, equipment_id, task_code, day)
                        values (:home, cast(:unit as uuid), :code, :day)""")
                .setParameter("home", homeId)
                .setParameter("unit", unit == null ? null : unit.toString())
                .setParameter("code", code)
                .setParameter("day", day)
                .executeUpdate();
    }

    private Optional<Tuple> task(UUID homeId, UUID taskId) {
        return rows.createNativeQuery("""
                        select equipment_id, task_code, act, due_on, done_on from household_task
                         where tenant_id = current_tenant() and id = :task and home_id = :home for update""", Tuple.class)
                .setParameter("task", taskId)
                .setParameter("home", homeId)
                .getResultStream()
                .map(Tuple.class::cast)
                .findFirst();
    }

    /** The machine that a household's task is done to; empty for a task of the home as a whole, and for one that is not there. */
    public Optional<UUID> machineOf(UUID homeId, UUID taskId) {
        return task(homeId, taskId).map(row -> row.get("equipment_id", UUID.class));
    }

    /** Whether the task asks for a new part rather than a look. */
    public boolean replaces(UUID homeId, UUID taskId) {
        return task(homeId, taskId)
                .filter(row -> row.get("act", String.class).equals("replace"))
                .isPresent();
    }
}
