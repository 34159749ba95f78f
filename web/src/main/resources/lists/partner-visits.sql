select g.visit_id as visit, h.key as home, p.name as partner, g.day, g.price_minor, g.currency, g.note, z.day as taken_back_on,
       z.why as taken_back_why, d.day as done_on, d.price_minor as asked_minor
  from partner_visit g join partner p on (p.tenant_id, p.id) = (g.tenant_id, g.partner_id)
  join visit v on (v.tenant_id, v.id) = (g.tenant_id, g.visit_id)
  join home h on (h.tenant_id, h.id) = (v.tenant_id, v.home_id)
  left join partner_visit_end z on (z.tenant_id, z.given_id) = (g.tenant_id, g.id)
  left join partner_visit_done d on (d.tenant_id, d.given_id) = (g.tenant_id, g.id)
 order by g.day, g.id
