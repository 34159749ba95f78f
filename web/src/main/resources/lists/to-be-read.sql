select h.key as home, q.name as unit, u.task_code as task, 'to be read' as day
  from last_time_unread u join home h on (h.tenant_id, h.id) = (u.tenant_id, u.home_id)
  join equipment q on (q.tenant_id, q.id) = (u.tenant_id, u.equipment_id)
 order by h.key, q.name, u.task_code
