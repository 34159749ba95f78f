-- Documents and payments name customers, homes, agreements and visits of the same business only.
alter table invoice
  add foreign key (tenant_id, customer_id) references customer (tenant_id, id),
  add foreign key (tenant_id, home_id) references home (tenant_id, id),
  add foreign key (tenant_id, agreement_id) references agreement (tenant_id, id),
  add foreign key (tenant_id, visit_id) references visit (tenant_id, id);
alter table invoice_line
  add foreign key (tenant_id, home_id) references home (tenant_id, id),
  add foreign key (tenant_id, agreement_id) references agreement (tenant_id, id),
  add foreign key (tenant_id, visit_id) references visit (tenant_id, id);
alter table payment
  add foreign key (tenant_id, customer_id) references customer (tenant_id, id);
