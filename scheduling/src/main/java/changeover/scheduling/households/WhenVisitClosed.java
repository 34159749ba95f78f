package changeover.scheduling.households;

import changeover.scheduling.closeout.VisitAmended;
import changeover.scheduling.closeout.VisitClosed;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.Set;
import java.util.UUID;

/** What a technician saw of a filter, or put in, moves the household's next looks at it. */
@ApplicationScoped
class WhenVisitClosed {

    @Inject
    EntityManager rows;

    @Inject
    FilterSlots slots;

    @Inject
    HouseholdRounds rounds;

    void follow(@Observes VisitClosed closed) {
        follow(closed.visitId(), closed.homeId());
    }

    void followAgain(@Observes VisitAmended amended) {
        follow(amended.now().visitId(), amended.now().homeId());
    }

    private void follow(UUID visit, UUID home) {
        @SuppressWarnings("unchecked")
        Set<UUID> worked = Set.copyOf(rows.createNativeQuery("""
                        select distinct equipment_id from visit_task
                         where tenant_id = current_tenant() and visit_id = :visit and equipment_id is not null""", UUID.class)
                .setParameter("visit", visit)
                .getResultList());
        List<FilterSlot> here = worked.isEmpty()
                ? List.of()
                : slots.ofHomes(List.of(home)).stream()
                        .filter(slot -> worked.contains(slot.id()))
                        .toList();
        rounds.follow(here);
    }
}
