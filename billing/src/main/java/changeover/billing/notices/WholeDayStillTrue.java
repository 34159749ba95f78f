package changeover.billing.notices;

import changeover.scheduling.dayplan.change.WholeDayHeard;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.util.List;
import java.util.UUID;

/** What a customer reads of a day that moved is still so: an hour that has changed meanwhile is never written, but rung. */
@ApplicationScoped
class WholeDayStillTrue implements StillTrue {

    private static final String OTHERWISE = """
            select 1 from whole_day_letter l
            join whole_day_visit v on v.tenant_id = l.tenant_id and v.whole_day_id = l.whole_day_id
              and v.customer_id = l.customer_id and v.told
            left join appointment a on a.tenant_id = v.tenant_id and a.visit_id = v.visit_id
            where l.id = :letter and ((a.day, a.starts) is distinct from (v.day, v.starts)
              or exists (select 1 from visit_ending e where e.tenant_id = v.tenant_id and e.visit_id = v.visit_id))
            """;

    @Inject
    EntityManager rows;

    @Inject
    WholeDayHeard heard;

    @Override
    public String kind() {
        return WholeDayMoves.KIND;
    }

    @Override
    public boolean holds(UUID letter) {
        return rows.createNativeQuery(OTHERWISE)
                .setParameter("letter", letter)
                .getResultList()
                .isEmpty();
    }

    @Override
    @SuppressWarnings("unchecked")
    public void withdrawn(UUID letter) {
        List<Tuple> found = rows.createNativeQuery(
                        "select whole_day_id, customer_id from whole_day_letter where id = :letter", Tuple.class)
                .setParameter("letter", letter)
                .getResultList();
        found.forEach(row -> heard.unheard(row.get("whole_day_id", UUID.class), row.get("customer_id", UUID.class)));
    }
}
