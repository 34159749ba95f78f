package changeover.scheduling.dayplan;

import changeover.contracts.calendar.Window;
import changeover.contracts.words.Wording;
import changeover.scheduling.visits.GivenOut;
import changeover.scheduling.visits.VisitKind;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.UUID;

/** Which visits wait: late ones, and those that are due and have no day. One statement a list. */
@ApplicationScoped
public class Due {

    private static final String OPEN = """
            from visit v
            left join visit_ending e on e.tenant_id = v.tenant_id and e.visit_id = v.id
            left join appointment a on a.tenant_id = v.tenant_id and a.visit_id = v.id
            """ + GivenOut.JOINED;

    private static final String COLUMNS = """
            select v.id, v.home_id, v.kind, v.window_from, v.window_until, v.minutes, coalesce(a.day, w.day) as day,
              concat_ws(', ', h.street, h.unit_label, h.city) as home,
              c.name as customer, c.phone, g.plan_name_en, g.plan_name_fr, coalesce(m.name, p.name) as technician,
              (select count(*) from visit_task t where t.tenant_id = v.tenant_id and t.visit_id = v.id) as tasks
            """;

    private static final String AROUND = """
            join home h on h.tenant_id = v.tenant_id and h.id = v.home_id
            left join agreement g on g.tenant_id = v.tenant_id and g.id = v.agreement_id
            left join membership m on m.tenant_id = a.tenant_id and m.person_id = a.technician_id
            left join lateral (
              select c.name, c.phone from home_part t
                join customer c on c.tenant_id = t.tenant_id and c.id = t.customer_id
               where t.tenant_id = v.tenant_id and t.home_id = v.home_id and t.part = 'signs'
                 and t.from_day <= :day and (t.until_day is null or t.until_day > :day)
               limit 1) c on true
            """;

    private static final String LATE = "where e.id is null and v.window_until <= :day ";

    private static final String WITHOUT_DAY =
            "where e.id is null and a.id is null and w.id is null and v.window_from <= :last and v.window_until > :day ";

    @Inject
    EntityManager rows;

    /** Visits whose last day is over and that nobody closed, the longest overdue first. */
    public List<DueVisit> late(LocalDate day, int from, int count) {
        return list(LATE, day, from, count, false);
    }

    /** Visits that may be made by the end of the month and have no day yet, the nearest deadline first. */
    public List<DueVisit> withoutDay(LocalDate day, int from, int count) {
        return list(WITHOUT_DAY, day, from, count, true);
    }

    /** Visits that may be made on some day of the window, whether they have a day or not; those that ended left out. */
    public List<DueVisit> open(Window window, LocalDate day, int from, int count) {
        Query ask = rows.createNativeQuery(
                        COLUMNS + OPEN + AROUND
                                + "where e.id is null and v.window_from < :until and v.window_until > :from"
                                + " order by v.window_until, h.city, h.street, v.id",
                        Tuple.class)
                .setParameter("from", window.from())
                .setParameter("until", window.until());
        return read(ask.setParameter("day", day), from, count);
    }

    private List<DueVisit> list(String which, LocalDate day, int from, int count, boolean toMonthEnd) {
        Query ask = rows.createNativeQuery(
                COLUMNS + OPEN + AROUND + which + "order by v.window_until, h.city, h.street, v.id", Tuple.class);
        if (toMonthEnd) {
            ask.setParameter("last", monthEnd(day));
        }
        return read(ask.setParameter("day", day), from, count);
    }

    @SuppressWarnings("unchecked")
    private static List<DueVisit> read(Query ask, int from, int count) {
        List<Tuple> found = ask.setFirstResult(from).setMaxResults(count).getResultList();
        return found.stream().map(Due::visit).toList();
    }

    private static DueVisit visit(Tuple row) {
        String plan = row.get("plan_name_en", String.class);
        return new DueVisit(
                row.get("id", UUID.class),
                row.get("home_id", UUID.class),
                row.get("home", String.class),
                row.get("customer", String.class),
                row.get("phone", String.class),
                VisitKind.ofCode(row.get("kind", String.class)),
                plan == null ? null : new Wording(plan, row.get("plan_name_fr", String.class)),
                new Window(row.get("window_from", LocalDate.class), row.get("window_until", LocalDate.class)),
                row.get("minutes", Integer.class),
                row.get("tasks", Long.class).intValue(),
                row.get("day", LocalDate.class),
                row.get("technician", String.class));
    }

    /** All counts of the day's page by one statement. */
    public DueCounts counts(LocalDate day) {
        Tuple row = (Tuple)
                rows.createNativeQuery("""
                        select
                          count(*) filter (where e.id is null and v.window_until <= :day) as late,
                          count(*) filter (where e.id is null and a.id is null and w.id is null and v.window_from <= :last
                            and v.window_until > :day) as due,
                          count(*) filter (where a.day = :day) as today,
                          count(*) filter (where a.day = :day and e.id is not null) as closed,
                          (select count(*) from unkept_promise u
                             join agreement g on g.tenant_id = u.tenant_id and g.id = u.agreement_id
                            where g.term_until > :day and not exists (select from agreement_ending x
                              where x.tenant_id = g.tenant_id and x.agreement_id = g.id and x.day <= :day)) as unkept,
                          (select count(*) from household_task k
                            where k.done_on is null and k.due_on < :day) as household
                        from visit v
                        left join visit_ending e on e.tenant_id = v.tenant_id and e.visit_id = v.id
                        left join appointment a on a.tenant_id = v.tenant_id and a.visit_id = v.id
                        """ + GivenOut.JOINED + " where e.id is null or a.day = :day", Tuple.class)
                        .setParameter("day", day)
                        .setParameter("last", monthEnd(day))
                        .getSingleResult();
        return new DueCounts(
                count(row, "late"),
                count(row, "due"),
                count(row, "today"),
                count(row, "closed"),
                count(row, "unkept"),
                count(row, "household"));
    }

    private static int count(Tuple row, String name) {
        return row.get(name, Long.class).intValue();
    }

    private static LocalDate monthEnd(LocalDate day) {
        return day.with(TemporalAdjusters.lastDayOfMonth());
    }
}
