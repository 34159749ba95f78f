select i.label as number, i.day, i.tax_day, t.position, t.code as tax, t.label_en, t.label_fr, t.category, t.percent, t.base_minor,
       t.amount_minor, t.region, t.registration, t.source, i.currency
  from invoice_issue i join invoice_tax t on (t.tenant_id, t.invoice_id) = (i.tenant_id, i.invoice_id)
 order by i.day, i.series, i.number, t.position
