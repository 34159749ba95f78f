package changeover.scheduling.visits;

import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.Task;
import changeover.contracts.tenants.Ids;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;

/**
 * The work that was promised for a machine which is no longer there is taken off the visits that have not begun. A visit stays, on
 * the days it had: the plan gives it, and where nothing is left to do the technician looks the equipment over.
 */
@ApplicationScoped
class MachinesTakenOut {

    private static final String OPEN_LINES = """
            delete from visit_task t using visit v
             where t.tenant_id = current_tenant() and t.equipment_id = :unit and v.tenant_id = t.tenant_id
               and v.id = t.visit_id
               and not exists (select from visit_ending e where e.tenant_id = v.tenant_id and e.visit_id = v.id)
               and not exists (select from operation o where o.tenant_id = v.tenant_id and o.visit_id = v.id)
            returning t.visit_id
            """;

    private static final String SHORTER = """
            update visit v set minutes = coalesce((
                select sum(t.minutes) from visit_task t where t.tenant_id = v.tenant_id and t.visit_id = v.id), 0)
             where v.tenant_id = current_tenant() and v.kind = 'plan' and v.id in :visits
            """;

    private static final String EMPTY = """
            select v.id from visit v
             where v.tenant_id = current_tenant() and v.kind = 'plan' and v.id in :visits
               and not exists (select from visit_task t where t.tenant_id = v.tenant_id and t.visit_id = v.id)
            """;

    private static final String LOOK_OVER = """
            insert into visit_task (id, visit_id, task_code, wording_en, wording_fr, who, ticket, minutes, due_from, due_until,
              reason_en, reason_fr, basis)
            select :id, v.id, :code, :en, :fr, 'technician', cast(:ticket as text), :minutes, v.window_from, v.window_until,
              :why_en, :why_fr, :basis
              from visit v where v.tenant_id = current_tenant() and v.id = :visit
            """;

    private static final String HOUSEHOLDS = """
            delete from household_task
             where tenant_id = current_tenant() and equipment_id = :unit and done_on is null and due_on >= :day
            """;

    private static final String COUNTED = """
            update year_planned y set tasks = (
                select count(*) from visit v
                  join visit_task t on t.tenant_id = v.tenant_id and t.visit_id = v.id
                 where v.tenant_id = y.tenant_id and v.agreement_id = y.agreement_id and v.kind = 'plan')
             where y.tenant_id = current_tenant() and y.agreement_id in (
               select agreement_id from visit where tenant_id = current_tenant() and id in :visits and agreement_id is not null)
            """;

    @Inject
    EntityManager rows;

    @Inject
    OwnCatalogue trade;

    void letFall(UUID unit, LocalDate day) {
        rows.createNativeQuery(HOUSEHOLDS)
                .setParameter("unit", unit)
                .setParameter("day", day)
                .executeUpdate();
        Set<UUID> touched =
                new HashSet<>(ids(rows.createNativeQuery(OPEN_LINES, UUID.class).setParameter("unit", unit)));
        if (touched.isEmpty()) {
            return;
        }
        List<UUID> empty = ids(rows.createNativeQuery(EMPTY, UUID.class).setParameter("visits", touched));
        empty.forEach(this::lookOver);
        rows.createNativeQuery(SHORTER).setParameter("visits", touched).executeUpdate();
        rows.createNativeQuery(COUNTED).setParameter("visits", touched).executeUpdate();
    }

    private void lookOver(UUID visit) {
        Task task = trade.catalogue().task(YearRows.LOOK_OVER);
        rows.createNativeQuery(LOOK_OVER)
                .setParameter("id", Ids.next())
                .setParameter("visit", visit)
                .setParameter("code", task.code())
                .setParameter("en", task.wording().en())
                .setParameter("fr", task.wording().fr())
                .setParameter("ticket", task.ticket().kind().orElse(null))
                .setParameter("minutes", task.minutes())
                .setParameter("why_en", PlannedVisit.NOTHING_ELSE.en())
                .setParameter("why_fr", PlannedVisit.NOTHING_ELSE.fr())
                .setParameter("basis", task.basis())
                .executeUpdate();
    }

    @SuppressWarnings("unchecked")
    private static List<UUID> ids(Query ask) {
        return ask.getResultList();
    }
}
