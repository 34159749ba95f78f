select i.label as number, i.kind, c.key as customer, h.key as home, i.day, i.due_day, k.label as credits,
       i.subtotal_minor, i.tax_minor as taxes_minor,
       i.total_minor, i.currency, i.purchase_order
  from invoice_issue i join customer c on (c.tenant_id, c.id) = (i.tenant_id, i.customer_id)
  left join home h on (h.tenant_id, h.id) = (i.tenant_id, i.home_id)
  left join invoice_issue k on (k.tenant_id, k.invoice_id) = (i.tenant_id, i.credits_id)
 order by i.day, i.series, i.number
