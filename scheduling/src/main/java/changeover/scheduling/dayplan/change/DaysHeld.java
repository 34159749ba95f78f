package changeover.scheduling.dayplan.change;

import changeover.contracts.calendar.Window;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Ticket;
import changeover.contracts.tenants.Today;
import changeover.scheduling.dayplan.Minutes;
import changeover.scheduling.dayplan.Roster;
import changeover.scheduling.dayplan.Rosters;
import changeover.scheduling.dayplan.TechnicianBase;
import changeover.scheduling.dayplan.TechnicianBases;
import changeover.scheduling.dayplan.TravelAtHand;
import changeover.scheduling.dayplan.routes.Travel;
import changeover.scheduling.dayplan.season.PlacesOnMap;
import changeover.scheduling.dayplan.season.Roads;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The days of the current business's technicians as they stand, with the roads between their homes. */
@ApplicationScoped
public class DaysHeld {

    private static final int A_DAY = 24 * 60;

    /** Whoever is on call on a day to come is not sent out in the night before it. */
    private static final int FIRST_CALL = 8 * 60;

    private static final int LAST_CALL = A_DAY - 5;

    private static final String HELD = """
            select a.visit_id, a.technician_id, a.starts, a.ends, h.latitude, h.longitude,
              (a.second or e.id is not null
                or exists (select 1 from appointment_second s where s.tenant_id = a.tenant_id and s.visit_id = a.visit_id)
                or exists (select 1 from operation o where o.tenant_id = a.tenant_id and o.visit_id = a.visit_id
                  and o.state = 'taken')
              ) as stays,
              exists (select 1 from hour_standing t where t.tenant_id = a.tenant_id and t.visit_id = a.visit_id
                and t.day = a.day and t.starts = a.starts) as told,
              concat_ws(' ', t.tickets, n.ticket) as tickets,
              case when exists (select 1 from appointment_second s where s.tenant_id = a.tenant_id and s.visit_id = a.visit_id)
                then 1 else greatest(coalesce(t.people, 1), coalesce(n.people, 1)) end as people,
              case when n.earliest is null and n.latest is null then t.earliest else n.earliest end as earliest,
              case when n.earliest is null and n.latest is null then t.latest else n.latest end as latest
            from (select tenant_id, visit_id, technician_id, day, starts, ends, false as second from appointment
              union all
              select tenant_id, visit_id, technician_id, day, starts, ends, true from appointment_second) a
            join visit v on v.tenant_id = a.tenant_id and v.id = a.visit_id
            join home h on h.tenant_id = v.tenant_id and h.id = v.home_id
            left join visit_ending e on e.tenant_id = v.tenant_id and e.visit_id = v.id
            left join visit_need n on n.tenant_id = v.tenant_id and n.visit_id = v.id
            left join lateral (
              select string_agg(distinct t.ticket, ' ') as tickets, max(k.people) as people,
                max(k.earliest) as earliest, min(k.latest) as latest
                from visit_task t left join task_need k on k.tenant_id = t.tenant_id and k.task_code = t.task_code
               where t.tenant_id = v.tenant_id and t.visit_id = v.id) t on true
            where a.day = :day order by a.starts
            """;

    /**
     * The days of everybody who works then, the roads, and the visits that are to come in, if any were named.
     *
     * @param onCall the same day of whoever is on call, from now until midnight; none where nobody is
     */
    public record Held(List<HeldDay> days, List<HeldDay> onCall, Roads roads, List<Insertions.Wanted> wanted) {

        public Optional<HeldDay> of(UUID technician) {
            return days.stream()
                    .filter(day -> day.technician().equals(technician))
                    .findFirst();
        }
    }

    @Inject
    EntityManager rows;

    @Inject
    People people;

    @Inject
    Businesses businesses;

    @Inject
    Rosters rosters;

    @Inject
    TechnicianBases bases;

    @Inject
    VisitsWanted wanted;

    @Inject
    OnCallThen onCall;

    @Inject
    TravelAtHand travel;

    @Inject
    Today today;

    /** The minute of the day before which everything has begun: nought for a day to come, all of a day that is over. */
    public int begun(LocalDate day) {
        if (day.isAfter(today.day())) {
            return 0;
        }
        return day.isBefore(today.day()) ? A_DAY : Minutes.of(today.time().toLocalTime());
    }

    /** The places of a day and of every technician who works then, so that their roads can be asked for ahead. */
    public List<Travel.Place> places(LocalDate day) {
        var map = new PlacesOnMap();
        shop(map);
        var _ = held(day, 0, Set.of(), map);
        bases.all().values().forEach(base -> map.number(base.latitude(), base.longitude()));
        return map.places();
    }

    private int shop(PlacesOnMap map) {
        var profile = businesses.profile();
        return map.number(profile.latitude().orElse(null), profile.longitude().orElse(null));
    }

    /** @param begun minute of the day before which everything has begun and stays; nought for a day to come */
    public Held on(LocalDate day, int begun) {
        return with(Set.of(), day, begun);
    }

    /** With somebody's visits too who does not work then, or works here no more. */
    Held onWith(UUID person, LocalDate day, int begun) {
        return with(Set.of(), day, begun, Optional.of(person));
    }

    /** With the visits that are to be fitted in, from a minute of the day on. */
    public Held with(Set<UUID> visits, LocalDate day, int begun) {
        return with(visits, day, begun, Optional.empty());
    }

    private Held with(Set<UUID> visits, LocalDate day, int begun, Optional<UUID> gone) {
        var map = new PlacesOnMap();
        int shop = shop(map);
        Roster roster = rosters.of(Window.ofDay(day));
        var crew = new Crew(held(day, begun, visits, map), bases.all(), tickets(day), shop, begun, map);
        var all = new LinkedHashSet<UUID>();
        people.technicians(day).stream().map(Membership::personId).forEach(all::add);
        gone.ifPresent(all::add);
        List<HeldDay> days = all.stream()
                .flatMap(id -> roster
                        .on(id, day)
                        .or(() -> gone.filter(id::equals).map(_ -> Roster.USUAL.getFirst()))
                        .map(hours -> crew.day(id, Minutes.of(hours.starts()), Minutes.of(hours.ends()), false))
                        .stream())
                .toList();
        // Somebody's own day off stands before their turn; a holiday is what the turn is for.
        List<HeldDay> called = onCall.on(day).stream()
                .filter(id -> !roster.off().getOrDefault(id, Set.of()).contains(day))
                .map(id -> crew.day(id, begun == 0 ? FIRST_CALL : 0, LAST_CALL, true))
                .toList();
        List<Insertions.Wanted> coming = wanted.of(visits, day, begun, map);
        return new Held(days, called, map.roads(travel.travel()), coming);
    }

    private record Crew(
            Map<UUID, List<HeldDay.Held>> held,
            Map<UUID, TechnicianBase.Facts> begin,
            Map<UUID, Set<String>> tickets,
            int shop,
            int begun,
            PlacesOnMap map) {

        HeldDay day(UUID id, int from, int until, boolean onCall) {
            TechnicianBase.Facts base = begin.get(id);
            return new HeldDay(
                    id,
                    tickets.getOrDefault(id, Set.of()),
                    base == null ? shop : map.number(base.latitude(), base.longitude()),
                    from,
                    until,
                    base == null ? TechnicianBases.USUAL_LUNCH : base.lunchMinutes(),
                    begun,
                    onCall,
                    held.getOrDefault(id, List.of()));
        }
    }

    private Map<UUID, Set<String>> tickets(LocalDate day) {
        return people.tickets().stream()
                .filter(ticket -> ticket.holdsOn(day))
                .collect(Collectors.groupingBy(Ticket::personId, Collectors.mapping(Ticket::kind, Collectors.toSet())));
    }

    @SuppressWarnings("unchecked")
    private Map<UUID, List<HeldDay.Held>> held(LocalDate day, int begun, Set<UUID> but, PlacesOnMap map) {
        List<Tuple> found = rows.createNativeQuery(HELD, Tuple.class)
                .setParameter("day", day)
                .getResultList();
        return found.stream()
                .filter(row -> !but.contains(row.get("visit_id", UUID.class)))
                .collect(Collectors.groupingBy(
                        row -> row.get("technician_id", UUID.class),
                        Collectors.mapping(row -> one(row, begun, map), Collectors.toList())));
    }

    private static HeldDay.Held one(Tuple row, int begun, PlacesOnMap map) {
        int starts = Minutes.of(row.get("starts", LocalTime.class));
        boolean told = row.get("told", Boolean.class);
        return new HeldDay.Held(
                row.get("visit_id", UUID.class),
                starts,
                Minutes.of(row.get("ends", LocalTime.class)),
                map.number(row.get("latitude", BigDecimal.class), row.get("longitude", BigDecimal.class)),
                Arrays.stream(row.get("tickets", String.class).split(" "))
                        .filter(kind -> !kind.isEmpty())
                        .collect(Collectors.toSet()),
                told || row.get("stays", Boolean.class) || starts < begun,
                told,
                minute(row.get("earliest", LocalTime.class), 0),
                minute(row.get("latest", LocalTime.class), A_DAY),
                row.get("people", Integer.class));
    }

    private static int minute(@Nullable LocalTime time, int otherwise) {
        return time == null ? otherwise : Minutes.of(time);
    }
}
