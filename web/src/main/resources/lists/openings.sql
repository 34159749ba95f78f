select c.key as customer, 'owed' as kind, o.since, o.amount_minor, o.currency, o.words
  from opening_balance o join customer c on (c.tenant_id, c.id) = (o.tenant_id, o.customer_id)
union all
select c.key, 'prepaid', p.day, p.amount_minor, p.currency, p.note
  from payment p join customer c on (c.tenant_id, c.id) = (p.tenant_id, p.customer_id)
 where p.way = 'before' and not exists (
   select from payment_undoing u where (u.tenant_id, u.payment_id) = (p.tenant_id, p.id))
 order by 2, 3, 1
