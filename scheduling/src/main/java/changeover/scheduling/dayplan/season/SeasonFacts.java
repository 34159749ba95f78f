package changeover.scheduling.dayplan.season;

import changeover.contracts.calendar.Window;
import changeover.contracts.customers.ShutTimes;
import changeover.scheduling.dayplan.Minutes;
import changeover.scheduling.dayplan.VisitsShutOut;
import changeover.scheduling.dayplan.WhichSeason;
import changeover.scheduling.dayplan.WhichSeasons;
import changeover.scheduling.visits.GivenOut;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What waits in a season and what is booked, each by one statement. */
@ApplicationScoped
class SeasonFacts {

    /** An hour written by hand for one visit stands before the hours of its tasks. */
    private static final String WANTED = """
            select v.id, v.window_from, v.window_until, v.minutes, h.latitude, h.longitude, t.tickets, n.ticket,
              greatest(coalesce(t.people, 1), coalesce(n.people, 1)) as people,
              case when n.earliest is null and n.latest is null then t.earliest else n.earliest end as earliest,
              case when n.earliest is null and n.latest is null then t.latest else n.latest end as latest
            from visit v
            join home h on h.tenant_id = v.tenant_id and h.id = v.home_id
            left join visit_need n on n.tenant_id = v.tenant_id and n.visit_id = v.id
            left join (
              select t.tenant_id, t.visit_id, string_agg(distinct t.ticket, ' ') as tickets, max(k.people) as people,
                max(k.earliest) as earliest, min(k.latest) as latest
              from visit_task t
              left join task_need k on k.tenant_id = t.tenant_id and k.task_code = t.task_code
              group by t.tenant_id, t.visit_id) t on t.tenant_id = v.tenant_id and t.visit_id = v.id
            where v.window_from < :until and (v.window_until > :from or v.window_until <= :tomorrow)
              and not exists (select 1 from appointment a where a.tenant_id = v.tenant_id and a.visit_id = v.id)
              and not exists (select 1 from visit_ending e where e.tenant_id = v.tenant_id and e.visit_id = v.id)
              and """ + GivenOut.NOT;

    private static final String BOOKED = """
            select a.technician_id, a.day, a.starts, a.ends, h.latitude, h.longitude
            from (select tenant_id, visit_id, technician_id, day, starts, ends from appointment
              union all
              select tenant_id, visit_id, technician_id, day, starts, ends from appointment_second) a
            join visit v on v.tenant_id = a.tenant_id and v.id = a.visit_id
            join home h on h.tenant_id = v.tenant_id and h.id = v.home_id
            where a.day >= :from and a.day < :until
            """;

    private static final int SHORTEST = 15;

    /** Hours of somebody that are given away. */
    record Taken(UUID technician, LocalDate day, Shift.Booked booked) {}

    @Inject
    EntityManager rows;

    @Inject
    VisitsShutOut shutOut;

    @Inject
    WhichSeasons which;

    /** The days of a window on which the home is shut are none; a visit that has no other waits for none. */
    List<Wanted> wanted(SeasonQuestion asked, PlacesOnMap map) {
        Window season = asked.days();
        WhichSeason own = which.today();
        Map<UUID, ShutTimes> shut = shutOut.inSeason(season);
        return tuples(over(WANTED, season).setParameter("tomorrow", own.tomorrow())).stream()
                .flatMap(row -> own
                        .days(season, window(row), asked.first())
                        .flatMap(shut.getOrDefault(row.get("id", UUID.class), ShutTimes.NEVER)::longestOpen)
                        .map(open -> wanted(row, open, map))
                        .stream())
                .toList();
    }

    private static Window window(Tuple row) {
        return new Window(row.get("window_from", LocalDate.class), row.get("window_until", LocalDate.class));
    }

    private static Wanted wanted(Tuple row, Window open, PlacesOnMap map) {
        return new Wanted(
                row.get("id", UUID.class),
                open,
                Math.max(SHORTEST, row.get("minutes", Integer.class)),
                tickets(row.get("tickets", String.class), row.get("ticket", String.class)),
                row.get("people", Integer.class),
                minute(row.get("earliest", LocalTime.class), 0),
                latest(row),
                map.number(row.get("latitude", BigDecimal.class), row.get("longitude", BigDecimal.class)));
    }

    /** Hours of two tasks that no hour meets: the earlier one is kept to. */
    private static int latest(Tuple row) {
        int latest = minute(row.get("latest", LocalTime.class), Wanted.MIDNIGHT);
        return Math.max(latest, minute(row.get("earliest", LocalTime.class), 0));
    }

    List<Taken> booked(Window season, PlacesOnMap map) {
        return tuples(over(BOOKED, season)).stream()
                .map(row -> new Taken(
                        row.get("technician_id", UUID.class),
                        row.get("day", LocalDate.class),
                        new Shift.Booked(
                                Minutes.of(row.get("starts", LocalTime.class)),
                                Minutes.of(row.get("ends", LocalTime.class)),
                                map.number(
                                        row.get("latitude", BigDecimal.class),
                                        row.get("longitude", BigDecimal.class)))))
                .toList();
    }

    private static int minute(@Nullable LocalTime time, int otherwise) {
        return time == null ? otherwise : Minutes.of(time);
    }

    private static Set<String> tickets(@Nullable String together, @Nullable String more) {
        var all = new HashSet<String>();
        if (together != null) {
            all.addAll(Arrays.asList(together.split(" ")));
        }
        if (more != null) {
            all.add(more);
        }
        return all;
    }

    private Query over(String sql, Window season) {
        return rows.createNativeQuery(sql, Tuple.class)
                .setParameter("from", season.from())
                .setParameter("until", season.until());
    }

    @SuppressWarnings("unchecked")
    private static List<Tuple> tuples(Query ask) {
        return ask.getResultList();
    }
}
