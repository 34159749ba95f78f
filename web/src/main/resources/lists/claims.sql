select c.visit_id as visit, h.key as home, q.name as unit, c.part_code as part, c.old_serial, c.new_serial, c.maker,
       c.claim_number, c.claimed_on, c.returned_on, c.credit_minor as awaited_minor, a.day as answered_on,
       a.amount_minor as credited_minor, a.words, coalesce(a.currency, c.currency) as currency
  from part_claim c join home h on (h.tenant_id, h.id) = (c.tenant_id, c.home_id)
  left join equipment q on (q.tenant_id, q.id) = (c.tenant_id, c.equipment_id)
  left join claim_answer a on (a.tenant_id, a.claim_id) = (c.tenant_id, c.id)
 order by c.claimed_on, c.id
