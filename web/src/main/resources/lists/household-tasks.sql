select h.key as home, a.number as agreement, q.name as unit, t.task_code as task, t.wording_en, t.wording_fr, t.due_from as "from",
       t.due_on as due, t.done_on, t.done_by
  from household_task t join home h on (h.tenant_id, h.id) = (t.tenant_id, t.home_id)
  join agreement a on (a.tenant_id, a.id) = (t.tenant_id, t.agreement_id)
  left join equipment q on (q.tenant_id, q.id) = (t.tenant_id, t.equipment_id)
 order by h.key, t.due_on, t.task_code
