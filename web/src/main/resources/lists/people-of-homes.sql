select h.key as home, c.key as customer, p.part, p.from_day as "from", p.until_day - 1 as last, p.purchase_order
  from home_part p join home h on (h.tenant_id, h.id) = (p.tenant_id, p.home_id)
  join customer c on (c.tenant_id, c.id) = (p.tenant_id, p.customer_id)
 order by h.key, p.part, p.from_day
