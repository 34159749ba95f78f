select o.visit_id as visit, h.key as home, o.part_code as part, o.quantity, o.supplier, o.ordered_on, o.expected_on,
       o.words,
       (select sum(a.quantity) from part_arrival a where (a.tenant_id, a.order_id) = (o.tenant_id, o.id)) as arrived
  from part_order o join home h on (h.tenant_id, h.id) = (o.tenant_id, o.home_id)
 order by o.ordered_on, o.part_code
