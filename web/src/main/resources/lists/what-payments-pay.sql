select i.label as number, a.day, a.amount_minor, p.currency, p.day as paid_on, p.way, p.reference
  from payment_allocation a join payment p on (p.tenant_id, p.id) = (a.tenant_id, a.payment_id)
  join invoice_issue i on (i.tenant_id, i.invoice_id) = (a.tenant_id, a.invoice_id)
 order by a.day, i.label
