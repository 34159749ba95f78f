package changeover.scheduling.reviews;

import changeover.contracts.calendar.Window;
import changeover.scheduling.reviews.Spread.Sample;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.math.BigDecimal;
import java.util.List;

/** What was measured and how long visits took in the current business, by who closed them. */
@ApplicationScoped
public class Spreads {

    /** The name under which the minutes of visits stand. */
    public static final String MINUTES = "minutes";

    @Inject
    EntityManager rows;

    /** Readings by code and kind of machine, {@code amps/air-handler}, in their base unit. */
    public List<Spread> readings(Window days) {
        return Spread.of(samples("""
                select r.code || '/' || coalesce(q.kind, '') as what, coalesce(r.unit, '') as unit, coalesce(m.name, '') as name, r.value
                  from reading r
                  join closure c on (c.tenant_id, c.visit_id) = (r.tenant_id, r.visit_id)
                  left join membership m on (m.tenant_id, m.person_id) = (c.tenant_id, c.technician_id)
                  left join equipment q on (q.tenant_id, q.id) = (r.tenant_id, r.equipment_id)
                 where r.tenant_id = current_tenant() and r.value is not null and c.day >= :from and c.day < :until
                   and not exists (select 1 from partner_visit_done d where (d.tenant_id, d.visit_id) = (c.tenant_id, c.visit_id))
                """, days));
    }

    /** Minutes at the home in per cent of the minutes planned, by kind of visit. */
    public List<Spread> times(Window days) {
        return Spread.of(samples("""
                select 'minutes/' || v.kind as what, '' as unit, coalesce(m.name, '') as name,
                       round(c.minutes * 100.0 / c.minutes_planned, 1) as value
                  from closure c
                  join visit v on (v.tenant_id, v.id) = (c.tenant_id, c.visit_id)
                  left join membership m on (m.tenant_id, m.person_id) = (c.tenant_id, c.technician_id)
                 where c.tenant_id = current_tenant() and c.minutes > 0 and c.minutes_planned > 0
                   and c.day >= :from and c.day < :until
                   and not exists (select 1 from partner_visit_done d where (d.tenant_id, d.visit_id) = (c.tenant_id, c.visit_id))
                """, days));
    }

    @SuppressWarnings("unchecked")
    private List<Sample> samples(String sql, Window days) {
        List<Tuple> found = rows.createNativeQuery(sql, Tuple.class)
                .setParameter("from", days.from())
                .setParameter("until", days.until())
                .getResultList();
        return found.stream()
                .map(row -> new Sample(
                        row.get("what", String.class),
                        row.get("unit", String.class),
                        row.get("name", String.class),
                        row.get("value", BigDecimal.class)))
                .toList();
    }
}
