select o.visit_id as visit, h.key as home, o.part_code as part, r.quantity, f.name as "from", coalesce(t.name, o.supplier) as "to",
       t.id is null as to_supplier, r.day, r.why, r.words, r.credit_minor as awaited_minor, c.day as answered_on,
       c.amount_minor as credited_minor, c.words as answer, coalesce(c.currency, r.currency) as currency
  from part_return r join part_order o on (o.tenant_id, o.id) = (r.tenant_id, r.order_id)
  join home h on (h.tenant_id, h.id) = (o.tenant_id, o.home_id)
  join stock_place f on (f.tenant_id, f.id) = (r.tenant_id, r.from_place_id)
  left join stock_place t on (t.tenant_id, t.id) = (r.tenant_id, r.to_place_id)
  left join part_credit c on (c.tenant_id, c.return_id) = (r.tenant_id, r.id)
 order by r.day, r.id
