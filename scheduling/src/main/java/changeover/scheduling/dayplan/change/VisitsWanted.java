package changeover.scheduling.dayplan.change;

import changeover.contracts.customers.HomesShut;
import changeover.scheduling.dayplan.Minutes;
import changeover.scheduling.dayplan.season.PlacesOnMap;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Visits of the current business that are to come into a day, with all that they ask of it, by one statement; one whose home is
 * shut on that day does not come.
 */
@ApplicationScoped
class VisitsWanted {

    private static final int A_DAY = 24 * 60;
    private static final int SHORTEST = 15;

    private static final String WANTED = """
            select v.id, v.minutes, h.latitude, h.longitude, concat_ws(' ', t.tickets, n.ticket) as tickets,
              greatest(coalesce(t.people, 1), coalesce(n.people, 1)) as people,
              case when n.earliest is null and n.latest is null then t.earliest else n.earliest end as earliest,
              case when n.earliest is null and n.latest is null then t.latest else n.latest end as latest
            from visit v
            join home h on h.tenant_id = v.tenant_id and h.id = v.home_id
            left join visit_need n on n.tenant_id = v.tenant_id and n.visit_id = v.id
            left join lateral (
              select string_agg(distinct t.ticket, ' ') as tickets, max(k.people) as people,
                max(k.earliest) as earliest, min(k.latest) as latest
                from visit_task t left join task_need k on k.tenant_id = t.tenant_id and k.task_code = t.task_code
               where t.tenant_id = v.tenant_id and t.visit_id = v.id) t on true
            where v.id in (:visits) and not exists (select 1 from """ + HomesShut.TIMES + """
               s where s.tenant_id = v.tenant_id and s.home_id = v.home_id and s.from_day <= :day
                and (s.until_day is null or s.until_day > :day))
            """;

    @Inject
    EntityManager rows;

    /** @param from minute of the day before which none may begin */
    @SuppressWarnings("unchecked")
    List<Insertions.Wanted> of(Set<UUID> visits, LocalDate day, int from, PlacesOnMap map) {
        if (visits.isEmpty()) {
            return List.of();
        }
        List<Tuple> found = rows.createNativeQuery(WANTED, Tuple.class)
                .setParameter("visits", visits)
                .setParameter("day", day)
                .getResultList();
        return found.stream()
                .map(row -> new Insertions.Wanted(
                        row.get("id", UUID.class),
                        Math.max(SHORTEST, row.get("minutes", Integer.class)),
                        Arrays.stream(row.get("tickets", String.class).split(" "))
                                .filter(kind -> !kind.isEmpty())
                                .collect(Collectors.toSet()),
                        map.number(row.get("latitude", BigDecimal.class), row.get("longitude", BigDecimal.class)),
                        row.get("people", Integer.class),
                        Math.max(from, minute(row.get("earliest", LocalTime.class), 0)),
                        minute(row.get("latest", LocalTime.class), A_DAY)))
                .toList();
    }

    private static int minute(@Nullable LocalTime time, int otherwise) {
        return time == null ? otherwise : Minutes.of(time);
    }
}
