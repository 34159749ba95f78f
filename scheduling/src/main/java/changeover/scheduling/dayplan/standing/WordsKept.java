package changeover.scheduling.dayplan.standing;

import changeover.contracts.calendar.Window;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** How the current business kept its word over some days, and which visits it did not come to. */
@ApplicationScoped
public class WordsKept {

    private static final String ENDED = """
            select count(*) filter (where how = 'closed') as made, count(*) filter (where how = 'not_kept') as not_kept,
              count(*) filter (where how = 'no_access') as no_access
            from visit_ending where tenant_id = current_tenant() and day >= :from and day < :until
            """;

    /** A visit that we moved and then did not come to counts once. */
    private static final String MOVED = """
            select count(distinct m.visit_id) filter (where m.asked_by = 'us' and not exists (
                select 1 from visit_ending e where e.tenant_id = m.tenant_id and e.visit_id = m.visit_id
                  and e.how = 'not_kept')) as us,
              count(distinct m.visit_id) filter (where m.asked_by = 'customer') as customer
            from appointment_move m
            where m.tenant_id = current_tenant() and m.told and m.was_day >= :from and m.was_day < :until
              and (m.day is null or m.day <> m.was_day or m.starts <> m.was_starts)
            """;

    private static final String NOT_KEPT = """
            select v.id, v.home_id, concat_ws(', ', h.street, h.unit_label, h.city) as home, e.day, e.why, m.name
            from visit_ending e
            join visit v on v.tenant_id = e.tenant_id and v.id = e.visit_id
            join home h on h.tenant_id = v.tenant_id and h.id = v.home_id
            left join membership m on m.tenant_id = e.tenant_id and m.person_id = e.made_by
            where e.tenant_id = current_tenant() and e.how = 'not_kept' and e.day >= :from and e.day < :until
            order by e.day desc, e.id
            """;

    /** @param by who wrote it down, by name; null where nobody with a name did */
    public record NotKept(
            UUID visit,
            UUID homeId,
            String home,
            LocalDate day,
            @Nullable String why,
            @Nullable String by) {}

    @Inject
    EntityManager rows;

    public WordKept over(Window days) {
        Tuple ended = (Tuple) asked(ENDED, days).getSingleResult();
        Tuple moved = (Tuple) asked(MOVED, days).getSingleResult();
        return new WordKept(
                count(ended, "made"),
                count(ended, "not_kept"),
                count(moved, "us"),
                count(moved, "customer"),
                count(ended, "no_access"));
    }

    /** The latest first. */
    @SuppressWarnings("unchecked")
    public List<NotKept> notKept(Window days, int most) {
        List<Tuple> found = asked(NOT_KEPT, days).setMaxResults(most).getResultList();
        return found.stream()
                .map(row -> new NotKept(
                        row.get("id", UUID.class),
                        row.get("home_id", UUID.class),
                        row.get("home", String.class),
                        row.get("day", LocalDate.class),
                        row.get("why", String.class),
                        row.get("name", String.class)))
                .toList();
    }

    private Query asked(String sql, Window days) {
        return rows.createNativeQuery(sql, Tuple.class)
                .setParameter("from", days.from())
                .setParameter("until", days.until());
    }

    private static int count(Tuple row, String name) {
        return row.get(name, Long.class).intValue();
    }
}
