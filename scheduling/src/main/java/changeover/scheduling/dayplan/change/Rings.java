package changeover.scheduling.dayplan.change;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The customers who must hear that their visit is not as it was. */
@ApplicationScoped
public class Rings {

    /** Whoever was told the hour that the visit has by now, since they were to be rung, knows already. */
    private static final String NOT_TOLD = """
             not exists (select 1 from appointment n join hour_told t on t.tenant_id = n.tenant_id and t.visit_id = n.visit_id
                and t.day = n.day and t.starts = n.starts
              where n.tenant_id = r.tenant_id and n.visit_id = r.visit_id and t.at > r.made_at)
            """;

    private static final String OPEN = """
            select r.id, r.visit_id, r.was_day, r.was_starts, r.was_told, m.name as was_technician,
              concat_ws(', ', h.street, h.unit_label, h.city) as home, c.name as customer, c.phone, a.day, a.starts,
              t.name as technician
            from to_ring r
            join visit v on v.tenant_id = r.tenant_id and v.id = r.visit_id
            join home h on h.tenant_id = v.tenant_id and h.id = v.home_id
            left join membership m on m.tenant_id = r.tenant_id and m.person_id = r.was_technician_id
            left join appointment a on a.tenant_id = v.tenant_id and a.visit_id = v.id
            left join membership t on t.tenant_id = a.tenant_id and t.person_id = a.technician_id
            left join lateral (
              select c.name, c.phone from home_part p
                join customer c on c.tenant_id = p.tenant_id and c.id = p.customer_id
               where p.tenant_id = v.tenant_id and p.home_id = v.home_id and p.part in ('lets_in', 'lives', 'signs')
                 and p.from_day <= r.was_day and (p.until_day is null or p.until_day > r.was_day)
               order by array_position(array['lets_in', 'lives', 'signs'], p.part), p.from_day limit 1) c on true
            where not exists (select 1 from rung d where d.tenant_id = r.tenant_id and d.ring_id = r.id)
              and """ + NOT_TOLD + """
            order by r.was_told desc, r.was_day, r.was_starts, r.id
            """;

    /**
     * Somebody to ring.
     *
     * @param told whether they were told the hour that it had
     * @param day the day it has now; null while it has none
     */
    public record Ring(
            UUID id,
            UUID visit,
            String home,
            @Nullable String customer,
            @Nullable String phone,
            LocalDate wasDay,
            LocalTime wasStarts,
            @Nullable String wasTechnician,
            boolean told,
            @Nullable LocalDate day,
            @Nullable LocalTime starts,
            @Nullable String technician) {}

    @Inject
    EntityManager rows;

    @Inject
    HoursTold told;

    /** Who was told an hour comes first. */
    @SuppressWarnings("unchecked")
    public List<Ring> open() {
        List<Tuple> found = rows.createNativeQuery(OPEN, Tuple.class).getResultList();
        return found.stream()
                .map(row -> new Ring(
                        row.get("id", UUID.class),
                        row.get("visit_id", UUID.class),
                        row.get("home", String.class),
                        row.get("customer", String.class),
                        row.get("phone", String.class),
                        row.get("was_day", LocalDate.class),
                        row.get("was_starts", LocalTime.class),
                        row.get("was_technician", String.class),
                        row.get("was_told", Boolean.class),
                        row.get("day", LocalDate.class),
                        row.get("starts", LocalTime.class),
                        row.get("technician", String.class)))
                .toList();
    }

    public int count() {
        return ((Number) rows.createNativeQuery("select count(*) from to_ring r where not exists"
                                + " (select 1 from rung d where d.tenant_id = r.tenant_id and d.ring_id = r.id) and "
                                + NOT_TOLD)
                        .getSingleResult())
                .intValue();
    }

    /** They know, also the hour that the visit has by now; false when nobody of the kind was to be rung. */
    public boolean rung(UUID ring) {
        Optional<UUID> visit = rows.createNativeQuery("select visit_id from to_ring where id = :ring", UUID.class)
                .setParameter("ring", ring)
                .getResultStream()
                .map(UUID.class::cast)
                .findFirst();
        visit.ifPresent(of -> {
            rows.createNativeQuery(
                            "insert into rung (ring_id) values (:ring) on conflict on constraint rung_once do nothing")
                    .setParameter("ring", ring)
                    .executeUpdate();
            told.tellThese(List.of(of));
        });
        return visit.isPresent();
    }
}
