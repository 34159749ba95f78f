package changeover.scheduling.dayplan;

import changeover.contracts.calendar.Window;
import changeover.contracts.words.Wording;
import changeover.scheduling.visits.GivenOut;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What a season asks of the crew: every visit that goes with it, what is late and waits for a day where it takes that, and the
 * promises that no visit keeps.
 */
@ApplicationScoped
public class SeasonVisits {

    /** Every state that a visit of the season can be in. */
    public static final List<String> STATES =
            List.of("unplaced", "placed", "closed", "cancelled", "no_access", "not_kept");

    private static final String STATE =
            "coalesce(e.how, case when a.id is null and w.id is null then 'unplaced' else 'placed' end)";

    private static final String FROM = """
             from visit v
             left join appointment a on a.tenant_id = v.tenant_id and a.visit_id = v.id
             left join visit_ending e on e.tenant_id = v.tenant_id and e.visit_id = v.id
             join home h on h.tenant_id = v.tenant_id and h.id = v.home_id
             left join membership m on m.tenant_id = a.tenant_id and m.person_id = a.technician_id
            """ + GivenOut.JOINED + """
            where ((v.window_from, v.window_until) in (select cast(w.f as date), cast(w.u as date)
                from unnest(cast(:froms as text[]), cast(:untils as text[])) as w (f, u))
              or (:late and v.window_until <= :tomorrow and a.id is null and e.id is null and w.id is null))
            """;

    private static final String WINDOWS =
            "select distinct window_from as f, window_until as u from visit where window_from < :until"
                    + " and window_until > :from";

    private static final String PROMISED =
            "select distinct due_from as f, due_until as u from unkept_promise where due_from < :until and due_until > :from";

    @Inject
    EntityManager rows;

    @Inject
    WhichSeasons which;

    /** By day, those without one by deadline; in every state when none is named. */
    public List<SeasonVisit> list(Window season, @Nullable String state, int skip, int count) {
        Query ask = over(
                season,
                "select v.id, v.home_id, concat_ws(', ', h.street, h.unit_label, h.city) as address, v.kind,"
                        + " v.window_from, v.window_until, v.minutes, " + STATE
                        + " as state, coalesce(e.day, a.day, w.day) as day,"
                        + " a.starts, a.technician_id, coalesce(m.name, p.name) as technician, e.why" + FROM
                        + (state == null ? "" : " and " + STATE + " = :state")
                        + " order by coalesce(e.day, a.day, w.day, v.window_until), a.starts, v.id");
        if (state != null) {
            ask.setParameter("state", state);
        }
        return tuples(ask.setFirstResult(skip).setMaxResults(count)).stream()
                .map(SeasonVisits::visit)
                .toList();
    }

    /** How many in each state, nought too. */
    public Map<String, Integer> counts(Window season) {
        var counts = new TreeMap<String, Integer>();
        STATES.forEach(state -> counts.put(state, 0));
        tuples(over(season, "select " + STATE + " as state, count(*) as visits" + FROM + " group by 1"))
                .forEach(row -> counts.put(
                        row.get("state", String.class),
                        row.get("visits", Long.class).intValue()));
        return counts;
    }

    public List<SeasonUnkept> unkept(Window season, int count) {
        return tuples(over("""
                        select u.home_id, u.agreement_id, u.task_code, u.wording_en, u.wording_fr, u.due_from, u.due_until,
                               u.why_en, u.why_fr, concat_ws(', ', h.street, h.unit_label, h.city) as address
                          from unkept_promise u
                          join home h on h.tenant_id = u.tenant_id and h.id = u.home_id
                         where (u.due_from, u.due_until) in (select cast(w.f as date), cast(w.u as date)
                           from unnest(cast(:froms as text[]), cast(:untils as text[])) as w (f, u))
                         order by u.due_until, u.id""", windows(season, PROMISED)).setMaxResults(count)).stream()
                .map(row -> new SeasonUnkept(
                        row.get("home_id", UUID.class),
                        row.get("address", String.class),
                        row.get("agreement_id", UUID.class),
                        row.get("task_code", String.class),
                        new Wording(row.get("wording_en", String.class), row.get("wording_fr", String.class)),
                        row.get("due_from", LocalDate.class),
                        row.get("due_until", LocalDate.class).minusDays(1),
                        new Wording(row.get("why_en", String.class), row.get("why_fr", String.class))))
                .toList();
    }

    private Query over(Window season, String sql) {
        WhichSeason own = which.today();
        return over(sql, windows(season, WINDOWS))
                .setParameter("late", own.takesLate(season))
                .setParameter("tomorrow", own.tomorrow());
    }

    private Query over(String sql, List<Window> windows) {
        return rows.createNativeQuery(sql, Tuple.class)
                .setParameter(
                        "froms",
                        windows.stream().map(one -> one.from().toString()).toArray(String[]::new))
                .setParameter(
                        "untils",
                        windows.stream().map(one -> one.until().toString()).toArray(String[]::new));
    }

    /** The few windows of many visits, or promises, that go with the season. */
    private List<Window> windows(Window season, String sql) {
        WhichSeason own = which.today();
        return tuples(rows.createNativeQuery(sql, Tuple.class)
                        .setParameter("from", season.from())
                        .setParameter("until", season.until()))
                .stream()
                .map(row -> new Window(row.get("f", LocalDate.class), row.get("u", LocalDate.class)))
                .filter(window -> own.holds(season, window))
                .toList();
    }

    @SuppressWarnings("unchecked")
    private static List<Tuple> tuples(Query ask) {
        return ask.getResultList();
    }

    private static SeasonVisit visit(Tuple row) {
        return new SeasonVisit(
                row.get("id", UUID.class),
                row.get("home_id", UUID.class),
                row.get("address", String.class),
                row.get("kind", String.class),
                row.get("window_from", LocalDate.class),
                row.get("window_until", LocalDate.class).minusDays(1),
                row.get("minutes", Integer.class),
                row.get("state", String.class),
                row.get("day", LocalDate.class),
                row.get("starts", LocalTime.class),
                row.get("technician_id", UUID.class),
                row.get("technician", String.class),
                row.get("why", String.class));
    }
}
