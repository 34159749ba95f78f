select d.number, p.day, c.key as customer, p.way, p.reference, d.words, p.amount_minor, (
         select coalesce(sum(a.amount_minor), 0)::bigint from payment_allocation a
          where (a.tenant_id, a.payment_id) = (p.tenant_id, p.id)) as applied_minor, (
         select coalesce(sum(r.amount_minor), 0)::bigint
           from deposit_return b join payment r on (r.tenant_id, r.id) = (b.tenant_id, b.refund_id)
          where (b.tenant_id, b.deposit_id) = (d.tenant_id, d.id) and not exists (
            select from payment_undoing x where (x.tenant_id, x.payment_id) = (r.tenant_id, r.id))) as given_back_minor,
       u.day as undone_on, u.how as undone_how, p.currency
  from deposit d join payment p on (p.tenant_id, p.id) = (d.tenant_id, d.payment_id)
  join customer c on (c.tenant_id, c.id) = (p.tenant_id, p.customer_id)
  left join payment_undoing u on (u.tenant_id, u.payment_id) = (p.tenant_id, p.id)
 order by d.number
