select v.id as visit, h.key as home, a.number as agreement, v.kind, v.window_from as "from",
       v.window_until - 1 as last, v.minutes as minutes_planned, coalesce(p.day, w.day) as day, p.starts,
       case when w.id is null then m.name end as technician,
       e.how as ended, e.day as ended_on, e.why as ended_why, c.minutes, c.received_by, c.household_note,
       r.name as partner
  from visit v join home h on (h.tenant_id, h.id) = (v.tenant_id, v.home_id)
  left join agreement a on (a.tenant_id, a.id) = (v.tenant_id, v.agreement_id)
  left join appointment p on (p.tenant_id, p.visit_id) = (v.tenant_id, v.id)
  left join closure c on (c.tenant_id, c.visit_id) = (v.tenant_id, v.id)
  left join membership m on (m.tenant_id, m.person_id) = (v.tenant_id, coalesce(c.technician_id, p.technician_id))
  left join visit_ending e on (e.tenant_id, e.visit_id) = (v.tenant_id, v.id)
  left join partner_visit w on (w.tenant_id, w.visit_id) = (v.tenant_id, v.id) and not exists (
    select from partner_visit_end z where (z.tenant_id, z.given_id) = (w.tenant_id, w.id))
  left join partner r on (r.tenant_id, r.id) = (w.tenant_id, w.partner_id)
 order by v.window_from, h.key, v.id
