select m.day, p.name as place, p.kind as place_kind, m.part_code as part, m.quantity, m.kind, m.why, m.visit_id as visit
  from stock_movement m join stock_place p on (p.tenant_id, p.id) = (m.tenant_id, m.place_id)
 order by m.day, m.id
