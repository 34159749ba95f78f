package changeover.scheduling.closeout;

import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.Task;
import changeover.contracts.words.Wording;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What was done in a home, when and by whom: tasks and parts of closed visits, and what the household did itself; the newest first. */
@ApplicationScoped
public class DoneInHome {

    private static final String DONE = """
            select u.day, u.equipment_id, q.name as machine, u.task_code, t.wording_en, t.wording_fr,
                   coalesce(x.name, m.name, '') as by_whom, false as household, cast(null as numeric) as quantity, t.position
              from unit_history u
              left join visit_task t on (t.tenant_id, t.id) = (u.tenant_id, u.visit_task_id)
              left join equipment q on (q.tenant_id, q.id) = (u.tenant_id, u.equipment_id)
              left join membership m on (m.tenant_id, m.person_id) = (u.tenant_id, u.technician_id)
              left join partner_visit_done d on (d.tenant_id, d.visit_id) = (u.tenant_id, u.visit_id)
              left join partner x on (x.tenant_id, x.id) = (d.tenant_id, d.partner_id)
             where u.tenant_id = current_tenant() and u.home_id = :home
            union all
            select c.day, p.equipment_id, q.name, p.part_code, coalesce(k.name_en, p.part_code),
                   coalesce(k.name_fr, p.part_code), coalesce(x.name, m.name, ''), false, p.quantity, 1000
              from part_used p
              join closure c on (c.tenant_id, c.visit_id) = (p.tenant_id, p.visit_id)
              left join part k on (k.tenant_id, k.code) = (p.tenant_id, p.part_code)
              left join equipment q on (q.tenant_id, q.id) = (p.tenant_id, p.equipment_id)
              left join membership m on (m.tenant_id, m.person_id) = (c.tenant_id, c.technician_id)
              left join partner_visit_done d on (d.tenant_id, d.visit_id) = (c.tenant_id, c.visit_id)
              left join partner x on (x.tenant_id, x.id) = (d.tenant_id, d.partner_id)
             where p.tenant_id = current_tenant() and c.home_id = :home
            union all
            select h.done_on, h.equipment_id, q.name, h.task_code, h.wording_en, h.wording_fr, h.done_by, true, null, 0
              from household_task h
              left join equipment q on (q.tenant_id, q.id) = (h.tenant_id, h.equipment_id)
             where h.tenant_id = current_tenant() and h.home_id = :home and h.done_on is not null
             order by 1 desc, 7, 3 nulls last, 10, 4
            """;

    /**
     * @param machine its name; null for the home as a whole
     * @param by the technician, the partner or, of the household's own tasks, who said so
     * @param fitted how many of a part were fitted; null for a task
     */
    public record Done(
            LocalDate day,
            @Nullable UUID equipmentId,
            @Nullable String machine,
            Wording what,
            String by,
            boolean household,
            @Nullable BigDecimal fitted) {}

    @Inject
    EntityManager rows;

    @Inject
    OwnCatalogue trade;

    @SuppressWarnings("unchecked")
    public List<Done> of(UUID homeId) {
        Catalogue catalogue = trade.catalogue();
        List<Tuple> found = rows.createNativeQuery(DONE, Tuple.class)
                .setParameter("home", homeId)
                .getResultList();
        return found.stream().map(row -> done(row, catalogue)).toList();
    }

    private static Done done(Tuple row, Catalogue catalogue) {
        String en = row.get("wording_en", String.class);
        String code = row.get("task_code", String.class);
        Wording what = en == null
                ? catalogue.findTask(code).map(Task::wording).orElse(new Wording(code, code))
                : new Wording(en, row.get("wording_fr", String.class));
        return new Done(
                row.get("day", LocalDate.class),
                row.get("equipment_id", UUID.class),
                row.get("machine", String.class),
                what,
                row.get("by_whom", String.class),
                row.get("household", Boolean.class),
                row.get("quantity", BigDecimal.class));
    }
}
