package changeover.scheduling.dayplan;

import changeover.contracts.calendar.Window;
import changeover.contracts.customers.ShutTimes;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Ticket;
import changeover.scheduling.visits.GivenOut;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Gives days to what a season still waits for, all by one statement; the database refuses a second place at one time. */
@ApplicationScoped
public class SeasonPlans {

    private static final String WAITING = """
            select v.id, v.window_from, v.window_until, v.minutes, concat_ws(' ', h.postal, h.city, h.street) as address,
              concat_ws(' ', t.tickets, n.ticket) as tickets,
              greatest(coalesce(t.people, 1), coalesce(n.people, 1)) as people,
              case when n.earliest is null and n.latest is null then t.earliest else n.earliest end as earliest,
              case when n.earliest is null and n.latest is null then t.latest else n.latest end as latest
            from visit v
            join home h on h.tenant_id = v.tenant_id and h.id = v.home_id
            left join appointment a on a.tenant_id = v.tenant_id and a.visit_id = v.id
            left join visit_ending e on e.tenant_id = v.tenant_id and e.visit_id = v.id
            left join visit_need n on n.tenant_id = v.tenant_id and n.visit_id = v.id
            left join lateral (
              select string_agg(distinct t.ticket, ' ') as tickets, max(k.people) as people,
                max(k.earliest) as earliest, min(k.latest) as latest
                from visit_task t left join task_need k on k.tenant_id = t.tenant_id and k.task_code = t.task_code
               where t.tenant_id = v.tenant_id and t.visit_id = v.id) t on true
            where a.id is null and e.id is null
              and v.window_from < :until and (v.window_until > :from or v.window_until <= :tomorrow)
              and """ + GivenOut.NOT;

    @Inject
    EntityManager rows;

    @Inject
    People people;

    @Inject
    Rosters rosters;

    @Inject
    VisitsShutOut shutOut;

    @Inject
    WhichSeasons which;

    /** @param first the first day on which anything may be given */
    public SeasonPlan suggest(Window season, LocalDate first) {
        return SeasonPlan.of(waiting(season, first), crew(first), rosters.of(season), taken(season), first);
    }

    /** Writes what was suggested. Refused as a whole when somebody gave one of those hours away meanwhile. */
    public void give(SeasonPlan plan) {
        if (plan.given().isEmpty()) {
            return;
        }
        write("appointment", plan.given(), SeasonPlan.Given::technician);
        List<SeasonPlan.Given> together =
                plan.given().stream().filter(one -> one.second() != null).toList();
        if (!together.isEmpty()) {
            write("appointment_second", together, one -> Objects.requireNonNull(one.second()));
        }
    }

    private void write(String table, List<SeasonPlan.Given> given, Function<SeasonPlan.Given, Object> who) {
        rows.createNativeQuery("insert into " + table + """
                         (visit_id, technician_id, day, starts, ends)
                        select cast(g.visit as uuid), cast(g.technician as uuid), cast(g.day as date),
                          cast(g.starts as time), cast(g.ends as time)
                        from unnest(cast(:visits as text[]), cast(:technicians as text[]), cast(:days as text[]),
                          cast(:starts as text[]), cast(:ends as text[])) as g (visit, technician, day, starts, ends)
                        """)
                .setParameter("visits", texts(given, SeasonPlan.Given::visit))
                .setParameter("technicians", texts(given, who))
                .setParameter("days", texts(given, SeasonPlan.Given::day))
                .setParameter("starts", texts(given, SeasonPlan.Given::starts))
                .setParameter("ends", texts(given, SeasonPlan.Given::ends))
                .executeUpdate();
    }

    private static String[] texts(List<SeasonPlan.Given> given, Function<SeasonPlan.Given, Object> which) {
        return given.stream().map(which).map(Object::toString).toArray(String[]::new);
    }

    @SuppressWarnings("unchecked")
    private List<SeasonPlan.Waiting> waiting(Window season, LocalDate first) {
        WhichSeason own = which.today();
        List<Tuple> found = rows.createNativeQuery(WAITING, Tuple.class)
                .setParameter("from", season.from())
                .setParameter("until", season.until())
                .setParameter("tomorrow", own.tomorrow())
                .getResultList();
        Map<UUID, ShutTimes> shut = shutOut.inSeason(season);
        return found.stream()
                .flatMap(row -> own
                        .days(
                                season,
                                new Window(
                                        row.get("window_from", LocalDate.class),
                                        row.get("window_until", LocalDate.class)),
                                first)
                        .flatMap(shut.getOrDefault(row.get("id", UUID.class), ShutTimes.NEVER)::longestOpen)
                        .map(open -> waiting(row, open))
                        .stream())
                .toList();
    }

    private static SeasonPlan.Waiting waiting(Tuple row, Window open) {
        return new SeasonPlan.Waiting(
                row.get("id", UUID.class),
                open,
                row.get("minutes", Integer.class),
                new Need(
                        row.get("people", Integer.class),
                        tickets(row.get("tickets", String.class)),
                        row.get("earliest", LocalTime.class),
                        row.get("latest", LocalTime.class)),
                row.get("address", String.class));
    }

    private static HashSet<String> tickets(String together) {
        return new HashSet<>(together.isEmpty() ? List.of() : Arrays.asList(together.split(" ")));
    }

    private List<SeasonPlan.Technician> crew(LocalDate first) {
        Map<UUID, Map<String, LocalDate>> held = people.tickets().stream()
                .collect(Collectors.groupingBy(
                        Ticket::personId,
                        Collectors.toMap(
                                Ticket::kind, ticket -> ticket.expiresOn().orElse(LocalDate.MAX))));
        return people.technicians(first).stream()
                .map(member -> new SeasonPlan.Technician(
                        member.personId(), held.getOrDefault(member.personId(), Map.of()), last(member)))
                .toList();
    }

    private static LocalDate last(Membership member) {
        return member.untilDay().orElse(LocalDate.MAX);
    }

    @SuppressWarnings("unchecked")
    private List<SeasonPlan.Taken> taken(Window season) {
        List<Tuple> found = rows.createNativeQuery("""
                        select technician_id, day, starts, ends from appointment where day >= :from and day < :until
                        union all
                        select technician_id, day, starts, ends from appointment_second where day >= :from and day < :until
                        """, Tuple.class)
                .setParameter("from", season.from())
                .setParameter("until", season.until())
                .getResultList();
        return found.stream()
                .map(row -> new SeasonPlan.Taken(
                        row.get("technician_id", UUID.class),
                        row.get("day", LocalDate.class),
                        row.get("starts", LocalTime.class),
                        row.get("ends", LocalTime.class)))
                .toList();
    }
}
