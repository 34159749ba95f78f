package changeover.scheduling.visits;

import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.UUID;

/** What a household did itself is written once, with the day and whoever did it; said again it changes nothing. */
@ApplicationScoped
public class HouseholdTasks {

    @Inject
    EntityManager rows;

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
