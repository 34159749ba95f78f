-- Agreements name homes, customers and machines of the same business.
alter table agreement
  add foreign key (tenant_id, home_id) references home (tenant_id, id),
  add foreign key (tenant_id, signer_id) references customer (tenant_id, id),
  add foreign key (tenant_id, payer_id) references customer (tenant_id, id);
alter table agreement_unit
  add foreign key (tenant_id, equipment_id) references equipment (tenant_id, id);
alter table agreement_promise
  add foreign key (tenant_id, equipment_id) references equipment (tenant_id, id);
