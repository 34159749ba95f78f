select p.day, p.kind, c.key as customer, p.way, p.amount_minor, p.currency, p.reference,
       p.note, u.day as undone_on, u.how as undone_how
  from payment p join customer c on (c.tenant_id, c.id) = (p.tenant_id, p.customer_id)
  left join payment_undoing u on (u.tenant_id, u.payment_id) = (p.tenant_id, p.id)
 order by p.day, p.id
