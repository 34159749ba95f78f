package changeover.scheduling.orders;

import changeover.contracts.calendar.Window;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;

/**
 * What technicians take along for the visits of some days: what came for them and did not go back. A part goes with the visit that was
 * made to use it, and with the one that waits for it where none was made.
 */
@ApplicationScoped
public class OrderNeeds {

    private static final String PARTS = """
            select d.technician_id, o.part_code, sum(coalesce(a.quantity, 0) - coalesce(r.quantity, 0)) as quantity
              from appointment d
              join lateral (
                select w.order_id from part_second_visit w where (w.tenant_id, w.visit_id) = (d.tenant_id, d.visit_id)
                union
                select q.id from part_order q where (q.tenant_id, q.visit_id) = (d.tenant_id, d.visit_id) and not exists (
                  select from part_second_visit w left join visit_ending e on (e.tenant_id, e.visit_id) = (w.tenant_id, w.visit_id)
                   where (w.tenant_id, w.order_id) = (q.tenant_id, q.id) and (e.how is null or e.how = 'closed'))) w on true
              join part_order o on o.tenant_id = d.tenant_id and o.id = w.order_id
              left join lateral (select sum(x.quantity) as quantity, max(x.day) as day, max(x.made_at) as at
                                   from part_arrival x
                                  where (x.tenant_id, x.order_id) = (o.tenant_id, o.id)) a on true
              left join lateral (select sum(x.quantity) as quantity from part_return x
                                  where (x.tenant_id, x.order_id) = (o.tenant_id, o.id)) r on true
             where d.tenant_id = current_tenant() and d.day >= :first and d.day < :until
               and not exists (select 1 from visit_ending e where (e.tenant_id, e.visit_id) = (d.tenant_id, d.visit_id))
               and not\s""" + OrderLists.USED_UP + """
             group by d.technician_id, o.part_code
            having sum(coalesce(a.quantity, 0) - coalesce(r.quantity, 0)) > 0
            """;

    @Inject
    EntityManager rows;

    /** By technician, then by part. */
    @SuppressWarnings("unchecked")
    public Map<UUID, Map<String, BigDecimal>> in(Window days) {
        List<Tuple> found = rows.createNativeQuery(PARTS, Tuple.class)
                .setParameter("first", days.from())
                .setParameter("until", days.until())
                .getResultList();
        Map<UUID, Map<String, BigDecimal>> needs = new HashMap<>();
        for (Tuple row : found) {
            needs.computeIfAbsent(row.get("technician_id", UUID.class), _ -> new TreeMap<>())
                    .put(row.get("part_code", String.class), OrderLists.plain(row.get("quantity", BigDecimal.class)));
        }
        return needs;
    }
}
