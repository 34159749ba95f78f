package changeover.contracts.plans;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** The plans of the current business. */
@ApplicationScoped
public class Plans {

    @Inject
    EntityManager rows;

    public Plan draft(PlanFacts facts) {
        Plan plan = Plan.draft(facts);
        rows.persist(plan);
        rows.flush();
        return plan;
    }

    /** Stores what a verb of the plan changed, so that what the database refuses is refused here. */
    public void keep() {
        rows.flush();
    }

    public Optional<Plan> find(UUID id) {
        return Optional.ofNullable(rows.find(Plan.class, id));
    }

    public Optional<Plan> find(String code) {
        return rows.createQuery("from Plan where code = :code", Plan.class)
                .setParameter("code", code)
                .getResultStream()
                .findFirst();
    }

    /** All of them, the dearest last. */
    public List<Plan> all() {
        return rows.createQuery("from Plan order by priceMinor, code", Plan.class)
                .getResultList();
    }

    public List<Plan> onSale(LocalDate day) {
        return all().stream().filter(plan -> plan.isOnSale(day)).toList();
    }
}
