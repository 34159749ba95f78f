package changeover.scheduling.households;

import changeover.contracts.words.Refusal;
import changeover.scheduling.intervals.Look;
import changeover.scheduling.visits.HouseholdTasks;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Who saw a filter, when and how it looked: the household's word as it was told, the technician's from the close-outs. A
 * ticked replacement is a change, though nobody said how the old one looked.
 */
@ApplicationScoped
public class FilterLooks {

    private static final String LOOKS = """
            select l.id, l.equipment_id, l.day, 'household' as who, l.told_by as name, l.found, l.changed,
              cast(null as uuid) as visit_id
              from filter_look l
             where l.tenant_id = current_tenant() and l.equipment_id in :slots and l.taken_back_on is null
            union all
            select cast(null as uuid), k.equipment_id, k.done_on, 'household', k.done_by, null, true, cast(null as uuid)
              from household_task k
             where k.tenant_id = current_tenant() and k.home_id in :homes and k.equipment_id in :slots
               and k.done_on is not null and k.act = 'replace'
               and not exists (select from filter_look l
                                where l.tenant_id = k.tenant_id and l.equipment_id = k.equipment_id and l.changed
                                  and (l.household_task_id = k.id or l.day = k.done_on))
               and not exists (select from closure c join part_used p on p.tenant_id = c.tenant_id and p.visit_id = c.visit_id
                                where c.tenant_id = k.tenant_id and c.home_id = k.home_id and c.day = k.done_on
                                  and p.equipment_id = k.equipment_id)
            union all
            select cast(null as uuid), t.equipment_id, c.day, 'technician', coalesce(m.name, ''),
              case max(r.entered_value) when 'yes' then 'clean' when 'no' then 'grey' end, count(p.id) > 0, c.visit_id
              from closure c
              join visit_task t on t.tenant_id = c.tenant_id and t.visit_id = c.visit_id and t.equipment_id in :slots
              left join membership m on m.tenant_id = c.tenant_id and m.person_id = c.technician_id
              left join reading r on r.tenant_id = t.tenant_id and r.visit_task_id = t.id and r.code = 'filter-clean'
              left join part_used p on p.tenant_id = c.tenant_id and p.visit_id = c.visit_id
                and p.equipment_id = t.equipment_id and exists (
                  select from part x where x.tenant_id = p.tenant_id and x.code = p.part_code and x.fits_key = 'filter')
             where c.tenant_id = current_tenant() and c.home_id in :homes
             group by t.equipment_id, c.day, m.name, c.visit_id
            having max(r.entered_value) in ('yes', 'no') or count(p.id) > 0
            order by 3, 4, 1
            """;

    /** The one that it answered, and those that were done with the change it told. */
    private static final String OPEN_AGAIN = """
            update household_task k set done_on = null, done_by = null from filter_look l
             where k.tenant_id = current_tenant() and l.tenant_id = k.tenant_id and l.id = :look
               and k.equipment_id = :slot and k.task_code = :task and k.done_on = l.day
               and (k.id = l.household_task_id or l.changed and k.done_by = l.told_by)
               and not exists (select from filter_look o
                                where o.tenant_id = l.tenant_id and o.equipment_id = l.equipment_id and o.day = l.day
                                  and o.told_by = l.told_by and o.changed and o.taken_back_on is null)
            """;

    private static final String FORGOTTEN = """
            delete from unit_history h using filter_look l
             where h.tenant_id = current_tenant() and l.tenant_id = h.tenant_id and l.id = :look and l.changed
               and h.equipment_id = :slot and h.task_code = :task and h.day = l.day and h.visit_id is null
               and not exists (select from filter_look o
                                where o.tenant_id = l.tenant_id and o.equipment_id = l.equipment_id and o.day = l.day
                                  and o.changed and o.taken_back_on is null)
               and not exists (select from household_task k
                                where k.tenant_id = l.tenant_id and k.equipment_id = l.equipment_id
                                  and k.task_code = h.task_code and k.done_on = l.day and k.act <> 'check')
            """;

    @Inject
    EntityManager rows;

    @Inject
    HouseholdTasks tasks;

    /**
     * One record of a slot.
     *
     * @param id of what was told between visits; null for a visit's record and for a bare tick
     * @param name who looked
     * @param visitId the closed visit it stands in
     */
    public record Told(
            @Nullable UUID id,
            UUID slot,
            Look look,
            String name,
            @Nullable UUID visitId) {}

    /** What somebody told: how it looked, and whether a new one was put in. */
    public record Telling(LocalDate day, @Nullable String found, boolean changed, String by) {}

    /** By slot, each in the order of the days; one statement. */
    public Map<UUID, List<Told>> of(Collection<FilterSlot> slots) {
        if (slots.isEmpty()) {
            return Map.of();
        }
        @SuppressWarnings("unchecked")
        List<Tuple> found = rows.createNativeQuery(LOOKS, Tuple.class)
                .setParameter("slots", slots.stream().map(FilterSlot::id).toList())
                .setParameter(
                        "homes",
                        slots.stream().map(FilterSlot::homeId).distinct().toList())
                .getResultList();
        return found.stream().map(FilterLooks::told).collect(Collectors.groupingBy(Told::slot));
    }

    private static Told told(Tuple row) {
        boolean technician = "technician".equals(row.get("who", String.class));
        return new Told(
                row.get("id", UUID.class),
                row.get("equipment_id", UUID.class),
                new Look(
                        row.get("day", LocalDate.class),
                        technician ? Look.By.TECHNICIAN : Look.By.HOUSEHOLD,
                        Look.What.of(row.get("found", String.class), row.get("changed", Boolean.class))),
                row.get("name", String.class),
                row.get("visit_id", UUID.class));
    }

    /**
     * Writes what was told of a slot; of one ticked task once.
     *
     * @param task the household's task it answers; null when somebody rang between two
     * @throws changeover.contracts.words.Refused when nothing was said, or nobody said it
     */
    public void tell(FilterSlot slot, Telling telling, @Nullable UUID task) {
        if (telling.found() == null && !telling.changed()) {
            throw Refusal.of("filter.says-nothing").at("found").thrown();
        }
        if (telling.by().isBlank()) {
            throw Refusal.of("household.says-who").at("by").thrown();
        }
        int written = rows.createNativeQuery("""
                        insert into filter_look (home_id, equipment_id, household_task_id, day, found, changed, told_by)
                        values (:home, :slot, cast(:task as uuid), :day, cast(:found as text), :changed, :by)
                        on conflict on constraint one_look_a_task do nothing""")
                .setParameter("home", slot.homeId())
                .setParameter("slot", slot.id())
                .setParameter("task", task == null ? null : task.toString())
                .setParameter("day", telling.day())
                .setParameter("found", telling.found())
                .setParameter("changed", telling.changed())
                .setParameter("by", telling.by().strip())
                .executeUpdate();
        if (written > 0 && telling.changed()) {
            tasks.count(slot.homeId(), slot.id(), slot.taskCode(), telling.day());
        }
    }

    /**
     * What was told by mistake counts no more: the household's tasks that were done by it are open again, and where nobody else
     * told a change of that day the machine's history forgets it. False when nothing of the kind stands there.
     */
    boolean takeBack(FilterSlot slot, UUID look, LocalDate day) {
        int back = rows.createNativeQuery("""
                        update filter_look set taken_back_on = :day
                         where tenant_id = current_tenant() and id = :look and equipment_id = :slot
                           and taken_back_on is null""")
                .setParameter("day", day)
                .setParameter("look", look)
                .setParameter("slot", slot.id())
                .executeUpdate();
        if (back > 0) {
            about(OPEN_AGAIN, slot, look).executeUpdate();
            about(FORGOTTEN, slot, look).executeUpdate();
        }
        return back > 0;
    }

    private Query about(String sql, FilterSlot slot, UUID look) {
        return rows.createNativeQuery(sql)
                .setParameter("slot", slot.id())
                .setParameter("look", look)
                .setParameter("task", slot.taskCode());
    }
}
