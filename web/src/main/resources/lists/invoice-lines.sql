select i.label as number, i.day, l.position, l.kind, l.item_code as item, l.coverage, l.work, l.words_en, l.words_fr, l.why_en,
       l.why_fr, l.quantity, l.unit, l.unit_price_minor, l.discount_percent, l.discount_minor, l.net_minor, i.currency
  from invoice_issue i join invoice_line l on (l.tenant_id, l.invoice_id) = (i.tenant_id, i.invoice_id)
 order by i.day, i.series, i.number, l.position
