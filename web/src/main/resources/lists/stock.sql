select p.name as place, p.kind as place_kind, m.part_code as part, sum(m.quantity) as quantity
  from stock_movement m join stock_place p on (p.tenant_id, p.id) = (m.tenant_id, m.place_id)
 group by p.name, p.kind, m.part_code having sum(m.quantity) <> 0 order by p.name, m.part_code
