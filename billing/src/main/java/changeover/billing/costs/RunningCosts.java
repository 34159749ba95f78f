package changeover.billing.costs;

import changeover.contracts.tenants.Businesses;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.List;

/** The business's own figures of set-up, overhead and the place where its trips begin. */
@ApplicationScoped
public class RunningCosts {

    @Inject
    EntityManager session;

    @Inject
    Businesses businesses;

    /** The newest first. */
    public List<RunningCost> all() {
        return session.createQuery("from RunningCost order by validFrom desc", RunningCost.class)
                .getResultList();
    }

    /** Figures from a day on; the same day again corrects them. */
    public void set(RunningCost.Facts facts) {
        session.createQuery("from RunningCost where validFrom = :from", RunningCost.class)
                .setParameter("from", facts.from())
                .getResultStream()
                .findFirst()
                .ifPresentOrElse(
                        cost -> cost.says(facts),
                        () -> session.persist(
                                RunningCost.from(facts, businesses.current().currency())));
        session.flush();
    }
}
