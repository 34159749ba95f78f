package changeover.scheduling.dayplan;

import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.CatalogueJson;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.Task;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Role;
import changeover.scheduling.visits.VisitEnd;
import changeover.scheduling.visits.VisitKind;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The days of the current business's technicians. */
@ApplicationScoped
public class DayPlans {

    private static final String STOPS = """
            select v.id, v.home_id, v.kind, v.window_from, v.window_until, v.minutes, v.note, a.technician_id,
              a.starts, a.ends, e.how, h.latitude, h.longitude,
              concat_ws(', ', h.street, h.unit_label, h.city) as home, c.name as opens, c.phone,
              (select count(*) from visit_task t where t.tenant_id = v.tenant_id and t.visit_id = v.id) as tasks
            from (select tenant_id, visit_id, technician_id, day, starts, ends from appointment
              union all
              select tenant_id, visit_id, technician_id, day, starts, ends from appointment_second) a
            join visit v on v.tenant_id = a.tenant_id and v.id = a.visit_id
            join home h on h.tenant_id = v.tenant_id and h.id = v.home_id
            left join visit_ending e on e.tenant_id = v.tenant_id and e.visit_id = v.id
            left join lateral (
              select c.name, c.phone from home_part p
                join customer c on c.tenant_id = p.tenant_id and c.id = p.customer_id
               where p.tenant_id = v.tenant_id and p.home_id = v.home_id and p.part in ('lets_in', 'lives', 'signs')
                 and p.from_day <= :day and (p.until_day is null or p.until_day > :day)
               order by array_position(array['lets_in', 'lives', 'signs'], p.part), p.from_day limit 1) c on true
            where a.day = :day
            """;

    private static final String TASKS = """
            select t.visit_id, t.task_code, cast(t.body as text) as body, q.name, cast(q.fits as text) as fits
            from appointment a
            join visit_task t on t.tenant_id = a.tenant_id and t.visit_id = a.visit_id
            left join equipment q on q.tenant_id = t.tenant_id and q.id = t.equipment_id
            where a.day = :day and t.act <> 'check'
            """;

    @Inject
    EntityManager rows;

    @Inject
    People people;

    @Inject
    OwnCatalogue trade;

    /** One technician's day; without a stop when there is none. */
    public DayPlan of(UUID technicianId, LocalDate day) {
        String name = people.of(technicianId).map(Membership::name).orElse("");
        return new DayPlan(
                technicianId, name, day, stops(day, Optional.of(technicianId)).getOrDefault(technicianId, List.of()));
    }

    /** The visits that are somebody's own on a day, not those to which they only go along. */
    public Set<UUID> leads(UUID technicianId, LocalDate day) {
        return Set.copyOf(rows.createQuery(
                        "select visitId from Appointment where technicianId = :technician and day = :day", UUID.class)
                .setParameter("technician", technicianId)
                .setParameter("day", day)
                .getResultList());
    }

    /** The day of everybody who works then or has a stop, by name. */
    public List<DayPlan> of(LocalDate day) {
        Map<UUID, List<DayPlan.Stop>> stops = stops(day, Optional.empty());
        return people.all().stream()
                .filter(member -> stops.containsKey(member.personId())
                        || (member.role() == Role.TECHNICIAN && member.worksOn(day)))
                .map(member -> new DayPlan(
                        member.personId(), member.name(), day, stops.getOrDefault(member.personId(), List.of())))
                .toList();
    }

    private Map<UUID, List<DayPlan.Stop>> stops(LocalDate day, Optional<UUID> technician) {
        String only = technician.isPresent() ? " and a.technician_id = :technician" : "";
        var askStops = rows.createNativeQuery(STOPS + only + " order by a.starts, v.id", Tuple.class)
                .setParameter("day", day);
        var askTasks = rows.createNativeQuery(TASKS + only + " order by t.visit_id, t.position", Tuple.class)
                .setParameter("day", day);
        technician.ifPresent(id -> {
            askStops.setParameter("technician", id);
            askTasks.setParameter("technician", id);
        });
        Catalogue catalogue = trade.catalogue();
        Map<UUID, List<DayPlan.Load>> loads = tuples(askTasks.getResultList()).stream()
                .collect(Collectors.groupingBy(
                        row -> row.get("visit_id", UUID.class),
                        Collectors.flatMapping(row -> loads(row, catalogue), Collectors.toList())));
        return tuples(askStops.getResultList()).stream()
                .collect(Collectors.groupingBy(
                        row -> row.get("technician_id", UUID.class),
                        Collectors.mapping(
                                row -> stop(row, loads.getOrDefault(row.get("id", UUID.class), List.of())),
                                Collectors.toList())));
    }

    /** What a row of a task uses up: its {@code task_code} or own {@code body}, the machine's {@code name} and {@code fits}. */
    static Stream<DayPlan.Load> loads(Tuple row, Catalogue catalogue) {
        String body = row.get("body", String.class);
        Optional<Task> task = body == null
                ? catalogue.findTask(row.get("task_code", String.class))
                : Optional.of(CatalogueJson.read(body, Task.class));
        String fits = row.get("fits", String.class);
        return task.stream()
                .flatMap(one ->
                        Loads.of(one, row.get("name", String.class), fits == null ? Map.of() : facts(fits), catalogue));
    }

    @SuppressWarnings("unchecked")
    private static Map<String, String> facts(String json) {
        return CatalogueJson.read(json, Map.class);
    }

    private static DayPlan.Stop stop(Tuple row, List<DayPlan.Load> load) {
        String how = row.get("how", String.class);
        return new DayPlan.Stop(
                row.get("id", UUID.class),
                row.get("home_id", UUID.class),
                row.get("home", String.class),
                row.get("opens", String.class),
                row.get("phone", String.class),
                row.get("latitude", BigDecimal.class),
                row.get("longitude", BigDecimal.class),
                VisitKind.ofCode(row.get("kind", String.class)),
                row.get("starts", LocalTime.class),
                row.get("ends", LocalTime.class),
                new Window(row.get("window_from", LocalDate.class), row.get("window_until", LocalDate.class)),
                row.get("minutes", Integer.class),
                row.get("tasks", Long.class).intValue(),
                how == null ? null : VisitEnd.ofCode(how),
                row.get("note", String.class),
                Loads.byMachine(load));
    }

    @SuppressWarnings("unchecked")
    static List<Tuple> tuples(List<?> rows) {
        return (List<Tuple>) rows;
    }
}
