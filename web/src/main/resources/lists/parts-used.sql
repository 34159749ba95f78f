select u.visit_id as visit, h.key as home, q.name as unit, u.part_code as part, u.quantity, p.name as "from", u.why, u.short_why,
       u.old_serial, u.new_serial
  from part_used u join visit v on (v.tenant_id, v.id) = (u.tenant_id, u.visit_id)
  join home h on (h.tenant_id, h.id) = (v.tenant_id, v.home_id)
  join stock_place p on (p.tenant_id, p.id) = (u.tenant_id, u.place_id)
  left join equipment q on (q.tenant_id, q.id) = (u.tenant_id, u.equipment_id)
 order by v.window_from, u.visit_id, u.part_code
