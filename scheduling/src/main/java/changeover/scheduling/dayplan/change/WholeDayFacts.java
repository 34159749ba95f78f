package changeover.scheduling.dayplan.change;

import changeover.contracts.calendar.Window;
import changeover.contracts.words.Wording;
import changeover.scheduling.dayplan.Minutes;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

/** What leaves a day of the current business, and what was promised of it, each by one statement. */
@ApplicationScoped
class WholeDayFacts {

    private static final String LEAVING = """
            select v.id, v.home_id, concat_ws(', ', h.street, h.unit_label, h.city) as address, c.customer_id,
              a.technician_id, v.window_from, v.window_until, a.starts,
              exists (select 1 from hour_standing t where t.tenant_id = a.tenant_id and t.visit_id = a.visit_id
                and t.day = a.day and t.starts = a.starts) as told,
              exists (select 1 from appointment_second s where s.tenant_id = a.tenant_id and s.visit_id = a.visit_id)
                or greatest(coalesce(t.people, 1), coalesce(n.people, 1)) > 1 as together
            from appointment a
            join visit v on v.tenant_id = a.tenant_id and v.id = a.visit_id
            join home h on h.tenant_id = v.tenant_id and h.id = v.home_id
            left join visit_need n on n.tenant_id = v.tenant_id and n.visit_id = v.id
            left join lateral (
              select max(k.people) as people
                from visit_task t join task_need k on k.tenant_id = t.tenant_id and k.task_code = t.task_code
               where t.tenant_id = v.tenant_id and t.visit_id = v.id) t on true
            left join lateral (
              select p.customer_id from home_part p
               where p.tenant_id = v.tenant_id and p.home_id = v.home_id and p.part in ('lets_in', 'lives', 'signs')
                 and p.from_day <= :day and (p.until_day is null or p.until_day > :day)
               order by array_position(array['lets_in', 'lives', 'signs'], p.part), p.from_day limit 1) c on true
            where a.day = :day and a.starts >= cast(:begun as time)
              and not exists (select 1 from visit_ending e where e.tenant_id = v.tenant_id and e.visit_id = v.id)
              and not exists (select 1 from operation o where o.tenant_id = v.tenant_id and o.visit_id = v.id
                and o.state = 'taken')
            order by a.starts, v.id
            """;

    private static final String PROMISED = """
            select visit_id, wording_en, wording_fr, due_from, due_until from visit_task
             where visit_id in (:visits) order by visit_id, position
            """;

    private static final int A_DAY = 24 * 60;

    /** A task with the days in which it was promised. */
    record Promised(UUID visit, Wording task, Window due) {}

    @Inject
    EntityManager rows;

    /** @param technicians all where none is named */
    @SuppressWarnings("unchecked")
    List<WholeDay.Leaving> leaving(LocalDate day, Set<UUID> technicians, int begun) {
        if (begun >= A_DAY) {
            return List.of();
        }
        List<Tuple> found = rows.createNativeQuery(LEAVING, Tuple.class)
                .setParameter("day", day)
                .setParameter("begun", Minutes.time(begun).toString())
                .getResultList();
        return found.stream()
                .map(row -> new WholeDay.Leaving(
                        row.get("id", UUID.class),
                        row.get("home_id", UUID.class),
                        row.get("address", String.class),
                        row.get("customer_id", UUID.class),
                        row.get("technician_id", UUID.class),
                        new Window(row.get("window_from", LocalDate.class), row.get("window_until", LocalDate.class)),
                        row.get("told", Boolean.class),
                        Minutes.of(row.get("starts", LocalTime.class)),
                        row.get("together", Boolean.class)))
                .filter(one -> technicians.isEmpty() || technicians.contains(one.technician()))
                .toList();
    }

    @SuppressWarnings("unchecked")
    Map<UUID, List<Promised>> promised(Collection<UUID> visits) {
        if (visits.isEmpty()) {
            return Map.of();
        }
        List<Tuple> found = rows.createNativeQuery(PROMISED, Tuple.class)
                .setParameter("visits", visits)
                .getResultList();
        return found.stream()
                .map(row -> new Promised(
                        row.get("visit_id", UUID.class),
                        new Wording(row.get("wording_en", String.class), row.get("wording_fr", String.class)),
                        new Window(row.get("due_from", LocalDate.class), row.get("due_until", LocalDate.class))))
                .collect(Collectors.groupingBy(Promised::visit));
    }
}
