select h.key as home, a.number as agreement, g.part_code as part, g.quantity, p.name as "from", g.how, g.day
  from part_given g join home h on (h.tenant_id, h.id) = (g.tenant_id, g.home_id)
  join agreement a on (a.tenant_id, a.id) = (g.tenant_id, g.agreement_id)
  join stock_place p on (p.tenant_id, p.id) = (g.tenant_id, g.place_id)
 order by g.day, g.id
