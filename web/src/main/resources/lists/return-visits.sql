select v.id as visit, h.key as home, v.answers_id as answers_visit, m.name as technician, r.cause, r.part_code as part,
       q.name as unit, r.words, e.how as ended, e.day as ended_on
  from visit v join home h on (h.tenant_id, h.id) = (v.tenant_id, v.home_id)
  left join return_visit r on (r.tenant_id, r.visit_id) = (v.tenant_id, v.id)
  left join equipment q on (q.tenant_id, q.id) = (r.tenant_id, r.equipment_id)
  left join closure c on (c.tenant_id, c.visit_id) = (v.tenant_id, v.answers_id)
  left join membership m on (m.tenant_id, m.person_id) = (c.tenant_id, c.technician_id)
  left join visit_ending e on (e.tenant_id, e.visit_id) = (v.tenant_id, v.id)
 where v.kind = 'return' or r.id is not null order by v.window_from, v.id
