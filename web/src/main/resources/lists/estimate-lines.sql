select o.label as number, e.id as estimate, l.position, l.kind, l.item_code as item, l.coverage, l.words_en, l.words_fr, l.quantity,
       l.unit, l.unit_price_minor, l.discount_minor, l.net_minor, e.currency
  from estimate_line l join estimate e on (e.tenant_id, e.id) = (l.tenant_id, l.estimate_id)
  left join estimate_offer o on (o.tenant_id, o.estimate_id) = (e.tenant_id, e.id)
 order by e.written_on, e.id, l.position
