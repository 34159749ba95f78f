package changeover.scheduling.dayplan;

import changeover.contracts.calendar.Window;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Ticket;
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
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Gives days to what a season still waits for, all by one statement; the database refuses a second place at one time. */
@ApplicationScoped
public class SeasonPlans {

    private static final String WAITING = """
            select v.id, v.window_from, v.window_until, v.minutes, concat_ws(' ', h.postal, h.city, h.street) as address,
              concat_ws(' ', (select string_agg(distinct t.ticket, ' ') from visit_task t
                where t.tenant_id = v.tenant_id and t.visit_id = v.id and t.ticket is not null), n.ticket) as tickets
            from visit v
            join home h on h.tenant_id = v.tenant_id and h.id = v.home_id
            left join appointment a on a.tenant_id = v.tenant_id and a.visit_id = v.id
            left join visit_ending e on e.tenant_id = v.tenant_id and e.visit_id = v.id
            left join visit_need n on n.tenant_id = v.tenant_id and n.visit_id = v.id
            where a.id is null and e.id is null and v.window_from >= :from and v.window_until <= :until
            """;

    @Inject
    EntityManager rows;

    @Inject
    People people;

    @Inject
    Rosters rosters;

    /** @param first the first day on which anything may be given */
    public SeasonPlan suggest(Window season, LocalDate first) {
        return SeasonPlan.of(waiting(season), crew(first), rosters.of(season), taken(season), first);
    }

    /** Writes what was suggested. Refused as a whole when somebody gave one of those hours away meanwhile. */
    public void give(SeasonPlan plan) {
        if (plan.given().isEmpty()) {
            return;
        }
        rows.createNativeQuery("""
                        insert into appointment (visit_id, technician_id, day, starts, ends)
                        select cast(g.visit as uuid), cast(g.technician as uuid), cast(g.day as date),
                          cast(g.starts as time), cast(g.ends as time)
                        from unnest(cast(:visits as text[]), cast(:technicians as text[]), cast(:days as text[]),
                          cast(:starts as text[]), cast(:ends as text[])) as g (visit, technician, day, starts, ends)
                        """)
                .setParameter("visits", texts(plan, SeasonPlan.Given::visit))
                .setParameter("technicians", texts(plan, SeasonPlan.Given::technician))
                .setParameter("days", texts(plan, SeasonPlan.Given::day))
                .setParameter("starts", texts(plan, SeasonPlan.Given::starts))
                .setParameter("ends", texts(plan, SeasonPlan.Given::ends))
                .executeUpdate();
    }

    private static String[] texts(SeasonPlan plan, Function<SeasonPlan.Given, Object> which) {
        return plan.given().stream().map(which).map(Object::toString).toArray(String[]::new);
    }

    @SuppressWarnings("unchecked")
    private List<SeasonPlan.Waiting> waiting(Window season) {
        List<Tuple> found = rows.createNativeQuery(WAITING, Tuple.class)
                .setParameter("from", season.from())
                .setParameter("until", season.until())
                .getResultList();
        return found.stream()
                .map(row -> new SeasonPlan.Waiting(
                        row.get("id", UUID.class),
                        new Window(row.get("window_from", LocalDate.class), row.get("window_until", LocalDate.class)),
                        row.get("minutes", Integer.class),
                        tickets(row.get("tickets", String.class)),
                        row.get("address", String.class)))
                .toList();
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
