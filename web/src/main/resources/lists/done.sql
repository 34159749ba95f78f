select h.key as home, q.name as unit, u.task_code as task, u.day, coalesce(x.name, m.name) as technician,
       u.visit_id as visit
  from unit_history u join home h on (h.tenant_id, h.id) = (u.tenant_id, u.home_id)
  left join equipment q on (q.tenant_id, q.id) = (u.tenant_id, u.equipment_id)
  left join membership m on (m.tenant_id, m.person_id) = (u.tenant_id, u.technician_id)
  left join partner_visit_done d on (d.tenant_id, d.visit_id) = (u.tenant_id, u.visit_id)
  left join partner x on (x.tenant_id, x.id) = (d.tenant_id, d.partner_id)
 order by u.day, h.key, u.task_code
