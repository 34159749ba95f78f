package changeover.billing.estimates;

import changeover.scheduling.orders.SecondVisitMade;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;

/**
 * What the first visit was promised to cost at most holds for the one that finishes it with its part too; so does what was agreed to
 * since, for what that visit found or its caller asked, while no visit does it.
 */
@ApplicationScoped
class WhenSecondVisitMade {

    private static final String WHAT_IT_DOES = """
            insert into estimate_work (estimate_id, visit_id)
            select w.estimate_id, :second from estimate_work w where w.visit_id = :first
            union
            select e.id, :second from estimate e
              join estimate_answer a on a.tenant_id = e.tenant_id and a.estimate_id = e.id and a.how = 'accepted'
               and a.undone_at is null
             where (e.visit_id = :first
                 or e.follow_up_id in (select f.id from follow_up f where f.visit_id = :first)
                 or e.call_id in (select o.call_id from call_outcome o where o.visit_id = :first))
               and not exists (select from estimate_work w where w.tenant_id = e.tenant_id and w.estimate_id = e.id)
            """;

    @Inject
    EntityManager rows;

    void bind(@Observes SecondVisitMade made) {
        rows.createNativeQuery(WHAT_IT_DOES)
                .setParameter("second", made.visitId())
                .setParameter("first", made.firstVisitId())
                .executeUpdate();
    }
}
