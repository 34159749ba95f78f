select p.name, p.trade, p.phone, p.email, e.day as ended_on, d.kind as paper, d.number as paper_number, d.expires_on,
       d.remind_days
  from partner p left join partner_end e on (e.tenant_id, e.partner_id) = (p.tenant_id, p.id)
  left join partner_paper d on (d.tenant_id, d.partner_id) = (p.tenant_id, p.id) and not exists (
    select from partner_paper_end x where (x.tenant_id, x.paper_id) = (d.tenant_id, d.id))
 order by p.name, p.trade, d.expires_on
