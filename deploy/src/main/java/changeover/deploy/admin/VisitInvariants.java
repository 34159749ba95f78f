package changeover.deploy.admin;

import java.util.List;

/** What happened: no visit without work, no closing by halves, no call lost, every operation in its place, every part from somewhere. */
final class VisitInvariants {
    static final List<Invariant> ALL = List.of(
            new Invariant("visits-have-tasks", "visit_task", """
                    select count(*), count(*) filter (where not exists (
                        select 1 from visit_task t where t.tenant_id = v.tenant_id and t.visit_id = v.id))
                      from visit v where v.kind = 'plan'"""),
            new Invariant("tasks-say-why", "visit_task", """
                    select count(*), count(*) filter (where trim(reason_en) = '' or trim(reason_fr) = '') from visit_task"""),
            new Invariant("closings-whole", "closure", """
                    select count(*), count(*) filter (where c.id is null or e.id is null or e.how <> 'closed')
                      from closure c
                      full join (select * from visit_ending where how = 'closed') e
                        on e.tenant_id = c.tenant_id and e.visit_id = c.visit_id"""),
            new Invariant("closed-tasks-answered", "task_outcome", """
                    select count(*), count(*) filter (where o.id is null)
                      from closure c
                      join visit_task t on t.tenant_id = c.tenant_id and t.visit_id = c.visit_id
                      left join task_outcome o on o.tenant_id = t.tenant_id and o.visit_task_id = t.id"""),
            new Invariant("ended-visits-free", "appointment", """
                    select count(*), count(*) filter (where e.how in ('cancelled', 'not_kept'))
                      from appointment a
                      left join visit_ending e on e.tenant_id = a.tenant_id and e.visit_id = a.visit_id"""),
            new Invariant("operations-once", "operation", """
                    select coalesce(sum(n), 0), count(*) filter (where last <> n or first <> 1)
                      from (select count(*) as n, max(place) as last, min(place) as first
                              from operation where state = 'taken' group by tenant_id, visit_id) o"""),
            new Invariant("calls", "call_outcome", """
                    select count(*), count(*) filter (where o.how = 'visit' and (
                             v.id is null or v.kind <> 'call' or v.home_id <> c.home_id)
                        or c.risks && array['alarm', 'gas', 'symptoms'] and not c.told_to_leave)
                      from call c
                      left join call_outcome o on o.tenant_id = c.tenant_id and o.call_id = c.id
                      left join visit v on v.tenant_id = o.tenant_id and v.id = o.visit_id"""),
            // What is written down at a visit that is under way moves when it is closed.
            new Invariant("parts-moved", "part_used", """
                    select count(*), count(*) filter (where p.quantity <> m.quantity and (m.quantity <> 0 or exists (
                        select 1 from visit_ending e where e.tenant_id = p.tenant_id and e.visit_id = p.visit_id)))
                      from (select tenant_id, visit_id, part_code, sum(quantity) as quantity
                              from part_used group by 1, 2, 3) p
                      cross join lateral (select coalesce(-sum(m.quantity), 0) as quantity from stock_movement m
                         where m.tenant_id = p.tenant_id and m.visit_id = p.visit_id and m.part_code = p.part_code
                           and m.kind in ('use', 'return')) m"""),
            new Invariant("moves-balance", "stock_movement", """
                    select coalesce(sum(n), 0), count(*) filter (where total <> 0)
                      from (select count(*) as n, sum(quantity) as total
                              from stock_movement where kind = 'move' group by tenant_id, operation_id, part_code) m"""),
            new Invariant("photos-whole", "photo_bytes", """
                    select count(*), count(*) filter (where encode(sha256(bytes), 'hex') <> kept_sha256) from photo_bytes"""));

    private VisitInvariants() {}
}
