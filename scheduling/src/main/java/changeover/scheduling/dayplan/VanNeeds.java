package changeover.scheduling.dayplan;

import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.OwnCatalogue;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What a technician's visits of some days use up: each time a task is done its part is counted, and of what is only taken along in
 * case it is needed, as much as the one visit that may need most of it.
 */
@ApplicationScoped
public class VanNeeds {

    private static final String TASKS = """
            select a.technician_id, t.visit_id, t.task_code, cast(t.body as text) as body, q.name, cast(q.fits as text) as fits
              from appointment a
              join visit_task t on t.tenant_id = a.tenant_id and t.visit_id = a.visit_id
              left join equipment q on q.tenant_id = t.tenant_id and q.id = t.equipment_id
             where a.day >= :first and a.day < :until and t.act <> 'check'
               and not exists (select 1 from visit_ending e where e.tenant_id = a.tenant_id and e.visit_id = a.visit_id)
             order by a.technician_id, a.day, a.starts, t.position
            """;

    @Inject
    EntityManager rows;

    @Inject
    OwnCatalogue trade;

    private record OfVisit(UUID technician, UUID visit, DayPlan.Load load) {}

    private record Same(String partKind, @Nullable String size) {}

    /** By technician, over the visits that have not ended: one statement. */
    public Map<UUID, List<DayPlan.Load>> in(Window days) {
        Catalogue catalogue = trade.catalogue();
        List<Tuple> read = DayPlans.tuples(rows.createNativeQuery(TASKS, Tuple.class)
                .setParameter("first", days.from())
                .setParameter("until", days.until())
                .getResultList());
        List<OfVisit> each = read.stream()
                .flatMap(row -> DayPlans.loads(row, catalogue)
                        .map(load -> new OfVisit(
                                row.get("technician_id", UUID.class), row.get("visit_id", UUID.class), load)))
                .toList();
        Map<UUID, List<DayPlan.Load>> needs = new HashMap<>();
        each.stream().collect(Collectors.groupingBy(OfVisit::technician)).forEach((technician, loads) -> {
            List<DayPlan.Load> sure = new ArrayList<>(Loads.together(loads.stream()
                    .map(OfVisit::load)
                    .filter(DayPlan.Load::eachTime)
                    .toList()));
            sure.addAll(inCase(loads));
            needs.put(technician, List.copyOf(sure));
        });
        return needs;
    }

    private static List<DayPlan.Load> inCase(List<OfVisit> loads) {
        Map<Same, DayPlan.Load> most = new HashMap<>();
        loads.stream()
                .filter(one -> !one.load().eachTime())
                .collect(Collectors.groupingBy(OfVisit::visit))
                .values()
                .forEach(visit -> Loads.together(
                                visit.stream().map(OfVisit::load).toList())
                        .forEach(load -> most.merge(
                                new Same(load.partKind(), load.size()),
                                load,
                                (one, other) -> one.quantity().compareTo(other.quantity()) < 0 ? other : one)));
        return most.values().stream()
                .sorted(Comparator.comparing(DayPlan.Load::partKind)
                        .thenComparing(load -> Objects.requireNonNullElse(load.size(), "")))
                .toList();
    }
}
