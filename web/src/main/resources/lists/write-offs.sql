select i.label as number, w.day, w.amount_minor, i.currency, w.why, k.label as taken_back_by_credit, p.day as taken_back_by_payment_of
  from write_off w join invoice_issue i on (i.tenant_id, i.invoice_id) = (w.tenant_id, w.invoice_id)
  left join invoice_issue k on (k.tenant_id, k.invoice_id) = (w.tenant_id, w.credit_id)
  left join payment p on (p.tenant_id, p.id) = (w.tenant_id, w.payment_id)
 order by w.day, w.id
