package changeover.scheduling.deferred;

import changeover.contracts.calendar.Climate;
import changeover.contracts.calendar.DayInWords;
import changeover.contracts.calendar.Season;
import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.CatalogueJson;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.Task;
import changeover.contracts.catalogue.UnitOfMeasure;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Wording;
import changeover.scheduling.closeout.Ids;
import changeover.scheduling.visits.GivenOut;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Puts what waits for warm weather in a home onto its next visit then, once; what finds none waits on. Only onto visits whose time the
 * household does not pay by the minute, the plan's own and returns, and that no partner makes.
 */
@ApplicationScoped
public class DeferredReadings {

    /** Ends a follow-up whose reading became work of a later visit. */
    static final String JOINED = "joined";

    private static final Wording REASON = new Wording(
            "Put off on %s, when it was too cold outside for the reading; it joins the home’s next visit in warm weather.",
            "Reportée le %s, quand il faisait trop froid dehors pour la prendre; elle se joint à la prochaine visite de la"
                    + " maison par temps doux.");

    private static final String WAITING = """
            select f.id, f.opened_on, t.id as line, t.equipment_id, t.task_code, cast(t.body as text) as body, t.minutes,
              o.cause, w.value as outdoor, w.unit as outdoor_unit
              from follow_up f
              join visit_task t on t.tenant_id = f.tenant_id and t.id = f.visit_task_id
              join equipment q on q.tenant_id = t.tenant_id and q.id = t.equipment_id and q.ended_on is null
              left join task_outcome o on o.tenant_id = t.tenant_id and o.visit_task_id = t.id
              left join lateral (
                select r.value, r.unit from reading r
                 where r.tenant_id = f.tenant_id and r.visit_id = f.visit_id and r.code = 'outdoor-air' and r.value is not null
                 order by r.value desc limit 1) w on true
             where f.tenant_id = current_tenant() and f.home_id = :home and f.kind = 'visit' and f.ended_on is null
             order by f.opened_on, f.id
            """;

    private static final String OPEN = """
            select v.id, v.window_from, v.window_until, v.minutes, a.day,
              (select count(*) from visit_task t where t.tenant_id = v.tenant_id and t.visit_id = v.id) as tasks,
              exists (select from visit_task t where t.tenant_id = v.tenant_id and t.visit_id = v.id
                         and t.equipment_id = :unit and t.task_code = :task) as reads
              from visit v
              left join appointment a on a.tenant_id = v.tenant_id and a.visit_id = v.id
             where v.tenant_id = current_tenant() and v.home_id = :home and v.kind in ('plan', 'return')
               and not exists (select from visit_ending e where e.tenant_id = v.tenant_id and e.visit_id = v.id)
               and not exists (select from operation o where o.tenant_id = v.tenant_id and o.visit_id = v.id)
               and """ + GivenOut.NOT;

    private static final String JOIN = """
            insert into visit_task (id, visit_id, equipment_id, task_code, wording_en, wording_fr, who, ticket, minutes,
              due_from, due_until, act, reason_en, reason_fr, basis, body, position, put_off_id)
            select :id, :visit, t.equipment_id, t.task_code, t.wording_en, t.wording_fr, t.who, t.ticket, t.minutes, :from,
              :until, t.act, :en, :fr, t.basis, t.body, :position, coalesce(t.put_off_id, t.id)
              from visit_task t where t.tenant_id = current_tenant() and t.id = :line
            """;

    private static final String LONGER = """
            update visit v set minutes = v.minutes + :minutes,
              window_from = case when :narrows then :from else v.window_from end,
              window_until = case when :narrows then :until else v.window_until end
             where v.tenant_id = current_tenant() and v.id = :visit
            """;

    /** An amendment says that the reading was taken after all: the later visit is spared it, unless it has begun. */
    private static final String TAKEN_AFTER_ALL = """
            select f.id, f.became_id, t.minutes from follow_up f
              join visit_task t on t.tenant_id = f.tenant_id and t.id = f.visit_task_id
              join task_outcome o on o.tenant_id = t.tenant_id and o.visit_task_id = t.id and o.outcome <> 'deferred'
             where f.tenant_id = current_tenant() and f.visit_id = :visit and f.ended_why = :joined
               and not exists (select from operation p where p.tenant_id = f.tenant_id and p.visit_id = f.became_id)
            """;

    @Inject
    EntityManager rows;

    @Inject
    OwnCatalogue trade;

    @Inject
    Today today;

    /** @return how many readings found their visit */
    public int join(UUID home) {
        List<Tuple> waiting = tuples(rows.createNativeQuery(WAITING, Tuple.class)
                .setParameter("home", home)
                .getResultList());
        if (waiting.isEmpty()) {
            return 0;
        }
        OwnCatalogue.Own own = trade.read();
        Optional<Season> warm = own.seasons().climate().find(Climate.WARM);
        int joined = 0;
        for (Tuple one : waiting) {
            BigDecimal needed = warmthNeeded(one, own);
            if (warm.isPresent() && needed != null && whyPutOff(one, needed).cold(warm.get())) {
                Optional<NextWarmVisit> next = NextWarmVisit.of(
                        open(home, one),
                        warm.get(),
                        one.get("opened_on", LocalDate.class),
                        one.get("minutes", Integer.class),
                        own.longestVisit());
                next.ifPresent(visit -> take(one, visit));
                joined += next.isPresent() ? 1 : 0;
            }
        }
        return joined;
    }

    private static WhyPutOff whyPutOff(Tuple one, BigDecimal needed) {
        BigDecimal outdoor = one.get("outdoor", BigDecimal.class);
        return new WhyPutOff(
                one.get("opened_on", LocalDate.class),
                one.get("cause", String.class),
                outdoor == null
                        ? null
                        : UnitOfMeasure.find(one.get("outdoor_unit", String.class))
                                .filter(unit -> unit.convertsTo(UnitOfMeasure.CELSIUS))
                                .map(unit -> unit.convert(outdoor, UnitOfMeasure.CELSIUS))
                                .orElse(null),
                needed);
    }

    /** Degrees Celsius outdoors that the task's readings ask for; null where any will do. */
    private static @Nullable BigDecimal warmthNeeded(Tuple one, OwnCatalogue.Own own) {
        String body = one.get("body", String.class);
        Optional<Task> task = body == null
                ? own.catalogue().findTask(one.get("task_code", String.class))
                : Optional.of(CatalogueJson.read(body, Task.class));
        return task.map(Task::outdoorAtLeast).orElse(null);
    }

    private List<NextWarmVisit.Open> open(UUID home, Tuple one) {
        return tuples(rows.createNativeQuery(OPEN, Tuple.class)
                        .setParameter("home", home)
                        .setParameter("unit", one.get("equipment_id", UUID.class))
                        .setParameter("task", one.get("task_code", String.class))
                        .getResultList())
                .stream()
                .map(row -> new NextWarmVisit.Open(
                        row.get("id", UUID.class),
                        new Window(row.get("window_from", LocalDate.class), row.get("window_until", LocalDate.class)),
                        row.get("day", LocalDate.class),
                        row.get("tasks", Long.class).intValue(),
                        row.get("minutes", Integer.class),
                        row.get("reads", Boolean.class)))
                .toList();
    }

    private void take(Tuple one, NextWarmVisit next) {
        UUID followUp = one.get("id", UUID.class);
        if (next.added()) {
            Wording day = DayInWords.of(one.get("opened_on", LocalDate.class));
            rows.createNativeQuery(JOIN)
                    .setParameter("id", Ids.derived(followUp, JOINED))
                    .setParameter("visit", next.visitId())
                    .setParameter("from", next.window().from())
                    .setParameter("until", next.window().until())
                    .setParameter("en", REASON.en().formatted(day.en()))
                    .setParameter("fr", REASON.fr().formatted(day.fr()))
                    .setParameter("position", 900)
                    .setParameter("line", one.get("line", UUID.class))
                    .executeUpdate();
            longer(next.visitId(), one.get("minutes", Integer.class), next.window());
        }
        rows.createNativeQuery("""
                        update follow_up set ended_on = :day, ended_why = :why, became_id = :visit
                         where tenant_id = current_tenant() and id = :id""")
                .setParameter("day", today.day())
                .setParameter("why", JOINED)
                .setParameter("visit", next.visitId())
                .setParameter("id", followUp)
                .executeUpdate();
    }

    /** A visit that has its day keeps its window, one without is made on the reading's days. */
    private void longer(UUID visit, int minutes, Window days) {
        boolean hasDay = !rows.createNativeQuery(
                        "select id from appointment where tenant_id = current_tenant() and visit_id = :visit",
                        UUID.class)
                .setParameter("visit", visit)
                .getResultList()
                .isEmpty();
        rows.createNativeQuery(LONGER)
                .setParameter("minutes", minutes)
                .setParameter("narrows", !hasDay)
                .setParameter("from", days.from())
                .setParameter("until", days.until())
                .setParameter("visit", visit)
                .executeUpdate();
    }

    /** What an amendment of a visit takes back. */
    void takeBack(UUID amendedVisit) {
        for (Tuple one : tuples(rows.createNativeQuery(TAKEN_AFTER_ALL, Tuple.class)
                .setParameter("visit", amendedVisit)
                .setParameter("joined", JOINED)
                .getResultList())) {
            int gone = rows.createNativeQuery("delete from visit_task where tenant_id = current_tenant() and id = :id")
                    .setParameter("id", Ids.derived(one.get("id", UUID.class), JOINED))
                    .executeUpdate();
            if (gone > 0) {
                rows.createNativeQuery("""
                                update visit set minutes = greatest(0, minutes - :minutes)
                                 where tenant_id = current_tenant() and id = :visit""")
                        .setParameter("minutes", one.get("minutes", Integer.class))
                        .setParameter("visit", one.get("became_id", UUID.class))
                        .executeUpdate();
            }
        }
    }

    @SuppressWarnings("unchecked")
    private static List<Tuple> tuples(List<?> found) {
        return (List<Tuple>) found;
    }
}
