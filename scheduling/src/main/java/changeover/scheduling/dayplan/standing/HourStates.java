package changeover.scheduling.dayplan.standing;

import changeover.scheduling.visits.VisitEnd;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;

/** How the hours of visits stand, by one statement for all that are asked about. */
@ApplicationScoped
public class HourStates {

    private static final String ASK = """
            select v.id, a.id is not null as has_day, e.how,
              exists (select 1 from hour_standing t where t.tenant_id = a.tenant_id and t.visit_id = a.visit_id
                and t.day = a.day and t.starts = a.starts) as told,
              exists (select 1 from operation o where o.tenant_id = v.tenant_id and o.visit_id = v.id
                and o.state = 'taken') as begun
            from visit v
            left join appointment a on a.tenant_id = v.tenant_id and a.visit_id = v.id
            left join visit_ending e on e.tenant_id = v.tenant_id and e.visit_id = v.id
            where v.tenant_id = current_tenant() and v.id in (:visits)
            """;

    @Inject
    EntityManager rows;

    public HourState of(UUID visit) {
        return of(List.of(visit)).getOrDefault(visit, HourState.WITHOUT_DAY);
    }

    @SuppressWarnings("unchecked")
    public Map<UUID, HourState> of(Collection<UUID> visits) {
        if (visits.isEmpty()) {
            return Map.of();
        }
        List<Tuple> found = rows.createNativeQuery(ASK, Tuple.class)
                .setParameter("visits", visits)
                .getResultList();
        return found.stream().collect(Collectors.toMap(row -> row.get("id", UUID.class), HourStates::state));
    }

    private static HourState state(Tuple row) {
        String how = row.get("how", String.class);
        return HourState.of(
                row.get("has_day", Boolean.class),
                row.get("told", Boolean.class),
                row.get("begun", Boolean.class),
                how == null ? null : VisitEnd.ofCode(how));
    }
}
