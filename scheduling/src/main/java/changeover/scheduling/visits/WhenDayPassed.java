package changeover.scheduling.visits;

import changeover.contracts.calendar.DayPassed;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/** On the day an agreement ends what is still open of it falls, when its end was said before. */
@ApplicationScoped
class WhenDayPassed {

    private static final String ENDED = """
            select n.agreement_id, n.why from agreement_ending n
             where n.tenant_id = current_tenant() and n.day = :day and exists (
               select from visit v where v.tenant_id = n.tenant_id and v.agreement_id = n.agreement_id and not exists (
                 select from visit_ending e where e.tenant_id = v.tenant_id and e.visit_id = v.id))
             order by n.agreement_id
            """;

    @Inject
    EntityManager rows;

    @Inject
    Visits visits;

    void letFall(@Observes DayPassed passed) {
        LocalDate ends = passed.day().plusDays(1);
        @SuppressWarnings("unchecked")
        List<Tuple> ended = rows.createNativeQuery(ENDED, Tuple.class)
                .setParameter("day", ends)
                .getResultList();
        ended.forEach(one -> visits.letFall(one.get("agreement_id", UUID.class), ends, one.get("why", String.class)));
    }
}
