select a.number, h.key as home, s.key as signer, p.key as payer, a.plan_code as plan, a.term_from as "from",
       a.term_until - 1 as last, a.price_minor, a.currency, a.instalments, a.visits,
       a.offered_on, a.valid_until, y.day as accepted_on, y.by_name as accepted_by, e.day as ended_on,
       e.why as ended_why, t.day as taken_over, t.paid_minor as paid_before_minor, t.last_visit
  from agreement a join home h on (h.tenant_id, h.id) = (a.tenant_id, a.home_id)
  join customer s on (s.tenant_id, s.id) = (a.tenant_id, a.signer_id)
  join customer p on (p.tenant_id, p.id) = (a.tenant_id, a.payer_id)
  left join agreement_acceptance y on (y.tenant_id, y.agreement_id) = (a.tenant_id, a.id)
  left join agreement_ending e on (e.tenant_id, e.agreement_id) = (a.tenant_id, a.id)
  left join agreement_taken_over t on (t.tenant_id, t.agreement_id) = (a.tenant_id, a.id)
 order by a.number
