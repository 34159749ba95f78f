select p.kind, p.name, m.name as person, p.number, p.expires_on, p.remind_days, e.day as put_away_on
  from business_paper p left join membership m on (m.tenant_id, m.person_id) = (p.tenant_id, p.person_id)
  left join business_paper_end e on (e.tenant_id, e.paper_id) = (p.tenant_id, p.id)
 order by p.name, p.expires_on, p.id
