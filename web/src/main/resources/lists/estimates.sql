select o.label as number, h.key as home, p.key as customer, e.words, e.written_on, e.valid_until, o.day as offered_on,
       o.subtotal_minor, o.tax_minor as taxes_minor,
       o.total_minor, e.currency, a.how as answer, a.by_name as answered_by,
       a.at as answered_at
  from estimate e join home h on (h.tenant_id, h.id) = (e.tenant_id, e.home_id)
  join customer p on (p.tenant_id, p.id) = (e.tenant_id, e.customer_id)
  left join estimate_offer o on (o.tenant_id, o.estimate_id) = (e.tenant_id, e.id)
  left join estimate_answer a on (a.tenant_id, a.estimate_id) = (e.tenant_id, e.id) and a.undone_at is null
 order by e.written_on, o.number
