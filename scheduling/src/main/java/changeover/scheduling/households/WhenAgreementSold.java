package changeover.scheduling.households;

import changeover.contracts.agreements.AgreementSold;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import jakarta.interceptor.Interceptor;
import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.Set;
import java.util.UUID;

/** A new term's list follows what is known of the home's filters; the year itself is laid before. */
@ApplicationScoped
class WhenAgreementSold {

    private static final int AFTER_THE_YEAR = Interceptor.Priority.APPLICATION + 900;

    /** Homes of which anybody told or decided anything: all others keep the list that was laid. */
    private static final String TOLD = """
            select distinct a.home_id from agreement a
             where a.tenant_id = current_tenant() and a.id in :agreements and (
               exists (select from filter_look l where l.tenant_id = a.tenant_id and l.home_id = a.home_id)
               or exists (select from own_interval i join equipment q on q.tenant_id = i.tenant_id and q.id = i.equipment_id
                           where i.tenant_id = a.tenant_id and q.home_id = a.home_id and q.kind = 'filter-slot')
               or exists (select from unit_history h join equipment q on q.tenant_id = h.tenant_id and q.id = h.equipment_id
                           where h.tenant_id = a.tenant_id and h.home_id = a.home_id and q.kind = 'filter-slot'))
            """;

    @Inject
    EntityManager rows;

    @Inject
    FilterSlots slots;

    @Inject
    HouseholdRounds rounds;

    void follow(@Observes @Priority(AFTER_THE_YEAR) AgreementSold event) {
        List<UUID> agreements =
                event.sold().stream().map(AgreementSold.Sold::agreementId).toList();
        @SuppressWarnings("unchecked")
        Set<UUID> homes = Set.copyOf(rows.createNativeQuery(TOLD, UUID.class)
                .setParameter("agreements", agreements)
                .getResultList());
        rounds.follow(slots.ofHomes(homes));
    }
}
