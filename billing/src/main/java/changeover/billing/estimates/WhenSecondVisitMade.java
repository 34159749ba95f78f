package changeover.billing.estimates;

import changeover.scheduling.orders.SecondVisitMade;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;

/** What the first visit was promised to cost at most holds for the one that finishes it with its part too. */
@ApplicationScoped
class WhenSecondVisitMade {

    @Inject
    EntityManager rows;

    void bind(@Observes SecondVisitMade made) {
        rows.createNativeQuery("insert into estimate_work (estimate_id, visit_id)"
                        + " select estimate_id, :second from estimate_work where visit_id = :first")
                .setParameter("second", made.visitId())
                .setParameter("first", made.firstVisitId())
                .executeUpdate();
    }
}
