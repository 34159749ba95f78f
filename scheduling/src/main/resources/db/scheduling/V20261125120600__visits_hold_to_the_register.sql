-- Visits and their tasks name homes and machines of the same business.
alter table visit
  add foreign key (tenant_id, home_id) references home (tenant_id, id);
alter table visit_task
  add foreign key (tenant_id, equipment_id) references equipment (tenant_id, id);
alter table household_task
  add foreign key (tenant_id, home_id) references home (tenant_id, id),
  add foreign key (tenant_id, equipment_id) references equipment (tenant_id, id);
alter table unkept_promise
  add foreign key (tenant_id, home_id) references home (tenant_id, id),
  add foreign key (tenant_id, equipment_id) references equipment (tenant_id, id);
