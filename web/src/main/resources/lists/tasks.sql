select t.visit_id as visit, h.key as home, q.name as unit, t.task_code as task, t.who, t.minutes,
       t.due_from as "from", t.due_until - 1 as last, o.outcome, o.reason
  from visit_task t join visit v on (v.tenant_id, v.id) = (t.tenant_id, t.visit_id)
  join home h on (h.tenant_id, h.id) = (v.tenant_id, v.home_id)
  left join equipment q on (q.tenant_id, q.id) = (t.tenant_id, t.equipment_id)
  left join task_outcome o on (o.tenant_id, o.visit_task_id) = (t.tenant_id, t.id)
 order by v.window_from, t.visit_id, t.position
