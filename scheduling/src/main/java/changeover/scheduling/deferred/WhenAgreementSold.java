package changeover.scheduling.deferred;

import changeover.contracts.agreements.AgreementSold;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import jakarta.interceptor.Interceptor;
import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.UUID;

/** A new year's visits take up what waited for warm weather; the year itself is laid before. */
@ApplicationScoped
class WhenAgreementSold {

    private static final int AFTER_THE_YEAR = Interceptor.Priority.APPLICATION + 901;

    @Inject
    EntityManager rows;

    @Inject
    DeferredReadings readings;

    void takeUp(@Observes @Priority(AFTER_THE_YEAR) AgreementSold event) {
        @SuppressWarnings("unchecked")
        List<UUID> waiting = rows.createNativeQuery("""
                        select distinct f.home_id from follow_up f
                         where f.tenant_id = current_tenant() and f.kind = 'visit' and f.ended_on is null
                           and f.visit_task_id is not null and f.home_id in :homes""", UUID.class)
                .setParameter(
                        "homes",
                        event.sold().stream().map(AgreementSold.Sold::homeId).toList())
                .getResultList();
        waiting.forEach(readings::join);
    }
}
