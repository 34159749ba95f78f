package changeover.scheduling.visits;

import changeover.contracts.calendar.Window;
import changeover.contracts.words.Wording;
import changeover.scheduling.visits.YearOfHome.Standing;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The years of the current business's homes: four statements a home, whatever its size. */
@ApplicationScoped
public class YearsOfHomes {

    private static final String VISITS = """
            select v.id, v.agreement_id, v.kind, v.window_from, v.window_until, v.minutes, v.note, e.how, e.why,
              coalesce(e.day, a.day, w.day) as day, a.starts, a.technician_id, coalesce(p.name, m.name) as technician
            from visit v
            left join visit_ending e on e.tenant_id = v.tenant_id and e.visit_id = v.id
            left join appointment a on a.tenant_id = v.tenant_id and a.visit_id = v.id
            left join membership m on m.tenant_id = a.tenant_id and m.person_id = a.technician_id
            """ + GivenOut.JOINED + """
            where v.home_id = :home and (v.window_from < :until and v.window_until > :from
              or coalesce(e.day, a.day, w.day) >= :from and coalesce(e.day, a.day, w.day) < :until)
            order by coalesce(e.day, a.day, w.day, v.window_until), v.id
            """;

    private static final String TASKS = """
            select t.id, t.visit_id, t.equipment_id, q.name as machine, t.task_code, t.wording_en, t.wording_fr,
              t.reason_en, t.reason_fr, t.basis, t.due_from, t.due_until, t.act, t.ticket, t.minutes
            from visit_task t
            left join equipment q on q.tenant_id = t.tenant_id and q.id = t.equipment_id
            where t.visit_id in :visits
            order by t.visit_id, t.position, t.id
            """;

    private static final String HOUSEHOLD = """
            select k.id, k.equipment_id, q.name as machine, k.task_code, k.wording_en, k.wording_fr, k.act, k.due_on,
              k.done_on, k.done_by
            from household_task k
            left join equipment q on q.tenant_id = k.tenant_id and q.id = k.equipment_id
            where k.home_id = :home and k.due_on >= :from and k.due_on < :until
            order by k.due_on, k.id
            """;

    private static final String UNKEPT = """
            select u.equipment_id, q.name as machine, u.task_code, u.wording_en, u.wording_fr, u.due_from, u.due_until,
              u.why_en, u.why_fr
            from unkept_promise u
            left join equipment q on q.tenant_id = u.tenant_id and q.id = u.equipment_id
            where u.home_id = :home and u.due_from < :until and u.due_until > :from
            order by u.due_until, u.id
            """;

    @Inject
    EntityManager rows;

    /**
     * @param year the days wanted
     * @param today the day by which a visit is late or may be made
     */
    public YearOfHome of(UUID homeId, Window year, LocalDate today) {
        List<Tuple> visits = ask(VISITS, homeId, year);
        Map<UUID, List<Tuple>> tasks = tasks(visits);
        List<YearOfHome.Going> goings = visits.stream()
                .map(row -> going(row, tasks.getOrDefault(row.get("id", UUID.class), List.of()), today))
                .toList();
        return new YearOfHome(
                homeId,
                year,
                goings.stream()
                        .filter(going -> going.standing() != Standing.CANCELLED)
                        .flatMap(going -> going.tasks().stream()
                                .map(line -> new YearOfHome.Promised(
                                        line.equipmentId(),
                                        line.machine(),
                                        line.taskCode(),
                                        line.task(),
                                        line.due(),
                                        going.visitId(),
                                        going.standing())))
                        .toList(),
                goings,
                ask(HOUSEHOLD, homeId, year).stream().map(YearsOfHomes::own).toList(),
                ask(UNKEPT, homeId, year).stream().map(YearsOfHomes::unkept).toList());
    }

    private Map<UUID, List<Tuple>> tasks(List<Tuple> visits) {
        if (visits.isEmpty()) {
            return Map.of();
        }
        return tuples(rows.createNativeQuery(TASKS, Tuple.class)
                        .setParameter(
                                "visits",
                                visits.stream()
                                        .map(row -> row.get("id", UUID.class))
                                        .toList())
                        .getResultList())
                .stream()
                .collect(Collectors.groupingBy(row -> row.get("visit_id", UUID.class)));
    }

    private List<Tuple> ask(String sql, UUID homeId, Window year) {
        return tuples(rows.createNativeQuery(sql, Tuple.class)
                .setParameter("home", homeId)
                .setParameter("from", year.from())
                .setParameter("until", year.until())
                .getResultList());
    }

    @SuppressWarnings("unchecked")
    private static List<Tuple> tuples(List<?> rows) {
        return (List<Tuple>) rows;
    }

    private static YearOfHome.Going going(Tuple row, List<Tuple> tasks, LocalDate today) {
        Window window = window(row, "window_from", "window_until");
        LocalDate day = row.get("day", LocalDate.class);
        return new YearOfHome.Going(
                row.get("id", UUID.class),
                row.get("agreement_id", UUID.class),
                VisitKind.ofCode(row.get("kind", String.class)),
                window,
                row.get("minutes", Integer.class),
                standing(row.get("how", String.class), day, window, today),
                day,
                row.get("starts", LocalTime.class),
                row.get("technician", String.class),
                row.get("technician_id", UUID.class),
                row.get("why", String.class),
                row.get("note", String.class),
                tasks.stream().map(YearsOfHomes::line).toList());
    }

    private static Standing standing(@Nullable String how, @Nullable LocalDate day, Window window, LocalDate today) {
        if (how != null) {
            return switch (VisitEnd.ofCode(how)) {
                case CLOSED -> Standing.CLOSED;
                case CANCELLED -> Standing.CANCELLED;
                case NO_ACCESS -> Standing.NO_ACCESS;
                case NOT_KEPT -> Standing.NOT_KEPT;
            };
        }
        if (day != null && !day.isBefore(today)) {
            return Standing.HAS_A_DAY;
        }
        if (!today.isBefore(window.until())) {
            return Standing.LATE;
        }
        if (day != null) {
            return Standing.HAS_A_DAY;
        }
        return today.isBefore(window.from()) ? Standing.TO_COME : Standing.WITHOUT_DAY;
    }

    private static YearOfHome.Line line(Tuple row) {
        return new YearOfHome.Line(
                row.get("id", UUID.class),
                row.get("equipment_id", UUID.class),
                row.get("machine", String.class),
                row.get("task_code", String.class),
                wording(row, "wording"),
                wording(row, "reason"),
                row.get("basis", String.class),
                window(row, "due_from", "due_until"),
                row.get("act", String.class),
                row.get("ticket", String.class),
                row.get("minutes", Integer.class));
    }

    private static YearOfHome.OwnTask own(Tuple row) {
        return new YearOfHome.OwnTask(
                row.get("id", UUID.class),
                row.get("equipment_id", UUID.class),
                row.get("machine", String.class),
                row.get("task_code", String.class),
                wording(row, "wording"),
                row.get("act", String.class),
                row.get("due_on", LocalDate.class),
                row.get("done_on", LocalDate.class),
                row.get("done_by", String.class));
    }

    private static YearOfHome.NotKept unkept(Tuple row) {
        return new YearOfHome.NotKept(
                row.get("equipment_id", UUID.class),
                row.get("machine", String.class),
                row.get("task_code", String.class),
                wording(row, "wording"),
                window(row, "due_from", "due_until"),
                wording(row, "why"));
    }

    private static Wording wording(Tuple row, String name) {
        return new Wording(row.get(name + "_en", String.class), row.get(name + "_fr", String.class));
    }

    private static Window window(Tuple row, String from, String until) {
        return new Window(row.get(from, LocalDate.class), row.get(until, LocalDate.class));
    }
}
