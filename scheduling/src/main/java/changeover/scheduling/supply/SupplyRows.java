package changeover.scheduling.supply;

import changeover.contracts.catalogue.Cadence;
import changeover.contracts.catalogue.CatalogueJson;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What is promised to homes under a plan, and how often tasks took a part when they were done. */
@ApplicationScoped
class SupplyRows {

    private static final String PROMISED = """
            select a.home_id, p.equipment_id, p.task_code, cast(p.cadence as text) as cadence, q.kind,
              cast(q.fits as text) as fits,
              (select max(h.day) from unit_history h where h.tenant_id = p.tenant_id and h.equipment_id = p.equipment_id
                  and h.task_code = p.task_code) as last
              from agreement a
              join year_planned y on y.tenant_id = a.tenant_id and y.agreement_id = a.id
              join agreement_promise p on p.tenant_id = a.tenant_id and p.agreement_id = a.id
              join equipment q on q.tenant_id = p.tenant_id and q.id = p.equipment_id and q.ended_on is null
             where a.tenant_id = current_tenant() and a.term_from <= :day and a.term_until > :day
               and p.task_code in :tasks
               and not exists (select from agreement_ending n where n.tenant_id = a.tenant_id and n.agreement_id = a.id)
             order by a.home_id, p.equipment_id, p.task_code
            """;

    private static final String DONE = """
            select t.task_code, count(*) as done from task_outcome o
              join visit_task t on t.tenant_id = o.tenant_id and t.id = o.visit_task_id
             where o.tenant_id = current_tenant() and o.outcome = 'done' and t.task_code in :tasks and t.act <> 'check'
             group by t.task_code
            """;

    private static final String TOOK = """
            select t.task_code, x.fits_key, count(distinct t.id) as took from task_outcome o
              join visit_task t on t.tenant_id = o.tenant_id and t.id = o.visit_task_id
              join part_used p on p.tenant_id = t.tenant_id and p.visit_id = t.visit_id and p.equipment_id = t.equipment_id
              join part x on x.tenant_id = p.tenant_id and x.code = p.part_code
             where o.tenant_id = current_tenant() and o.outcome = 'done' and t.task_code in :tasks and t.act <> 'check'
             group by t.task_code, x.fits_key
            """;

    @Inject
    EntityManager rows;

    /** A task that a plan promises on one machine, and when it was last done. */
    record Promised(
            UUID home,
            UUID unit,
            String task,
            Cadence cadence,
            String kind,
            Map<String, String> fits,
            @Nullable LocalDate last) {}

    record TaskPart(String task, String kind) {}

    /** How often tasks were done, and of those how often a kind of part was used with them. */
    record Shares(Map<String, Long> done, Map<TaskPart, Long> took) {}

    List<Promised> promised(Collection<String> tasks, LocalDate day) {
        Map<String, Cadence> cadences = new HashMap<>();
        return tuples(rows.createNativeQuery(PROMISED, Tuple.class)
                        .setParameter("day", day)
                        .setParameter("tasks", tasks)
                        .getResultList())
                .stream()
                .map(row -> new Promised(
                        row.get("home_id", UUID.class),
                        row.get("equipment_id", UUID.class),
                        row.get("task_code", String.class),
                        cadences.computeIfAbsent(row.get("cadence", String.class), Cadence::ofJson),
                        row.get("kind", String.class),
                        fits(row.get("fits", String.class)),
                        row.get("last", LocalDate.class)))
                .toList();
    }

    Shares shares(Collection<String> tasks) {
        Map<String, Long> done = new HashMap<>();
        tuples(rows.createNativeQuery(DONE, Tuple.class)
                        .setParameter("tasks", tasks)
                        .getResultList())
                .forEach(row -> done.put(row.get("task_code", String.class), row.get("done", Long.class)));
        Map<TaskPart, Long> took = new HashMap<>();
        tuples(rows.createNativeQuery(TOOK, Tuple.class)
                        .setParameter("tasks", tasks)
                        .getResultList())
                .forEach(row -> took.put(
                        new TaskPart(row.get("task_code", String.class), String.valueOf(row.get("fits_key"))),
                        row.get("took", Long.class)));
        return new Shares(done, took);
    }

    @SuppressWarnings("unchecked")
    private static List<Tuple> tuples(List<?> found) {
        return (List<Tuple>) found;
    }

    @SuppressWarnings("unchecked")
    private static Map<String, String> fits(String json) {
        return CatalogueJson.read(json, Map.class);
    }
}
