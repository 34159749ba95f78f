package changeover.scheduling.visits;

import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/** What a household did itself is written once, with the day and whoever did it; said again it changes nothing. */
@ApplicationScoped
public class HouseholdTasks {

    @Inject
    EntityManager rows;

    /** A household's own task that nobody has written as done. */
    public record Open(UUID id, UUID homeId, LocalDate dueOn) {}

    /** Of the whole business, what was due by a day and is not written as done, the earliest first. */
    public List<Open> openBy(LocalDate day) {
        List<Open> open = new ArrayList<>();
        for (Object one : rows.createNativeQuery("""
                        select id, home_id, due_on from household_task
                         where tenant_id = current_tenant() and done_on is null and due_on <= :day
                         order by due_on, id""", Tuple.class)
                .setParameter("day", day)
                .getResultList()) {
            Tuple row = (Tuple) one;
            open.add(new Open(row.get(0, UUID.class), row.get(1, UUID.class), row.get(2, LocalDate.class)));
        }
        return open;
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
        int known = rows.createNativeQuery("""
                        update household_task set done_on = coalesce(done_on, :day), done_by = coalesce(done_by, :by)
                         where tenant_id = current_tenant() and id = :task and home_id = :home""")
                .setParameter("day", day)
                .setParameter("by", by.strip())
                .setParameter("task", taskId)
                .setParameter("home", homeId)
                .executeUpdate();
        if (known == 0) {
            throw Refusal.of("household.unknown").thrown();
        }
    }
}
