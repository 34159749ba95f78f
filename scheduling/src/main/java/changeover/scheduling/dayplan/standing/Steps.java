package changeover.scheduling.dayplan.standing;

import changeover.scheduling.dayplan.Moving;
import changeover.scheduling.dayplan.standing.Step.Hour;
import changeover.scheduling.dayplan.standing.Step.Kind;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What became of the hours that visits had, first to last, by one statement for all that are asked about. */
@ApplicationScoped
public class Steps {

    private static final String NO_HOUR =
            "cast(null as date) as was_day, cast(null as time) as was_starts, cast(null as uuid) as was_person";

    /** A day that was given after an earlier one was taken off stands behind it. */
    private static final String GIVEN = """
            select a.tenant_id, a.visit_id, case when exists (
                select 1 from appointment_move o where o.tenant_id = a.tenant_id and o.visit_id = a.visit_id
                  and o.day is null) then 1 else 0 end as rank,
              'given' as kind, a.made_at as at, a.made_by as person, %s,
              coalesce(f.was_day, a.day) as day, coalesce(f.was_starts, a.starts) as starts,
              coalesce(f.was_technician_id, a.technician_id) as technician,
              cast(null as text) as asked_by, cast(null as text) as why
            from appointment a left join lateral (
              select m.was_day, m.was_starts, m.was_technician_id from appointment_move m
               where m.tenant_id = a.tenant_id and m.visit_id = a.visit_id and m.made_at >= a.made_at
               order by m.made_at, m.id limit 1) f on true
            where a.visit_id in (:visits) and not exists (
              select 1 from visit_ending e where e.tenant_id = a.tenant_id and e.visit_id = a.visit_id)
            """.formatted(NO_HOUR);

    private static final String TOLD = """
            select t.tenant_id, t.visit_id, 1, 'told', t.at, t.made_by, %s, t.day, t.starts, null, null, null
            from hour_told t where t.visit_id in (:visits)
            """.formatted(NO_HOUR);

    private static final String MOVED = """
            select m.tenant_id, m.visit_id, 1, 'moved', m.at, m.made_by, m.was_day, m.was_starts, m.was_technician_id,
              m.day, m.starts, m.technician_id, m.asked_by, m.why
            from appointment_move m where m.visit_id in (:visits)
            """;

    private static final String UNDER_WAY = """
            select o.tenant_id, o.visit_id, 2, 'under_way', min(o.at), (array_agg(o.person_id order by o.place))[1], %s,
              null, null, null, null, null
            from operation o where o.visit_id in (:visits) and o.state = 'taken' group by o.tenant_id, o.visit_id
            """.formatted(NO_HOUR);

    private static final String ENDED = """
            select e.tenant_id, e.visit_id, 3, e.how, e.made_at, e.made_by, %s, e.day, null, null, null, e.why
            from visit_ending e where e.visit_id in (:visits)
            """.formatted(NO_HOUR);

    private static final String ASK = "select s.*, b.name as by_name, w.name as was_name, n.name as now_name from ("
            + String.join(" union all ", GIVEN, TOLD, MOVED, UNDER_WAY, ENDED)
            + ") s left join membership b on b.tenant_id = s.tenant_id and b.person_id = s.person"
            + " left join membership w on w.tenant_id = s.tenant_id and w.person_id = s.was_person"
            + " left join membership n on n.tenant_id = s.tenant_id and n.person_id = s.technician"
            + " where s.tenant_id = current_tenant() order by s.visit_id, s.rank, s.at";

    @Inject
    EntityManager rows;

    public List<Step> of(UUID visit) {
        return of(List.of(visit)).getOrDefault(visit, List.of());
    }

    @SuppressWarnings("unchecked")
    public Map<UUID, List<Step>> of(Collection<UUID> visits) {
        if (visits.isEmpty()) {
            return Map.of();
        }
        List<Tuple> found = rows.createNativeQuery(ASK, Tuple.class)
                .setParameter("visits", visits)
                .getResultList();
        return found.stream()
                .map(Steps::step)
                .collect(Collectors.groupingBy(Step::visit, LinkedHashMap::new, Collectors.toList()));
    }

    private static Step step(Tuple row) {
        String asked = row.get("asked_by", String.class);
        return new Step(
                row.get("visit_id", UUID.class),
                Kind.ofCode(row.get("kind", String.class)),
                row.get("at", Instant.class),
                row.get("by_name", String.class),
                hour(row, "was_day", "was_starts", "was_name"),
                hour(row, "day", "starts", "now_name"),
                asked == null ? null : Moving.By.ofCode(asked),
                row.get("why", String.class));
    }

    private static @Nullable Hour hour(Tuple row, String day, String starts, String name) {
        LocalDate on = row.get(day, LocalDate.class);
        return on == null ? null : new Hour(on, row.get(starts, LocalTime.class), row.get(name, String.class));
    }
}
