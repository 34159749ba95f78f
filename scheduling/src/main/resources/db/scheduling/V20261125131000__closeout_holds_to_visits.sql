-- Close-out names visits, tasks, homes and machines of the same business; a reading stands as the reading rule says.
alter table stock_movement
  add foreign key (tenant_id, visit_id) references visit (tenant_id, id);
alter table operation
  add foreign key (tenant_id, visit_id) references visit (tenant_id, id);
alter table closure
  add foreign key (tenant_id, visit_id) references visit (tenant_id, id),
  add foreign key (tenant_id, home_id) references home (tenant_id, id);
alter table task_outcome
  add foreign key (tenant_id, visit_id) references visit (tenant_id, id),
  add foreign key (tenant_id, visit_task_id) references visit_task (tenant_id, id);
alter table reading
  add foreign key (tenant_id, visit_id) references visit (tenant_id, id),
  add foreign key (tenant_id, visit_task_id) references visit_task (tenant_id, id),
  add foreign key (tenant_id, home_id) references home (tenant_id, id),
  add foreign key (tenant_id, equipment_id) references equipment (tenant_id, id),
  add column act_on boolean not null default false,
  drop constraint reading_standing_check,
  add constraint reading_standing check (standing in ('below', 'within', 'above', 'not_judged'));
alter table finding
  add foreign key (tenant_id, visit_id) references visit (tenant_id, id),
  add foreign key (tenant_id, visit_task_id) references visit_task (tenant_id, id),
  add foreign key (tenant_id, home_id) references home (tenant_id, id),
  add foreign key (tenant_id, equipment_id) references equipment (tenant_id, id);
alter table photo
  add foreign key (tenant_id, visit_id) references visit (tenant_id, id),
  add foreign key (tenant_id, visit_task_id) references visit_task (tenant_id, id);
alter table part_used
  add foreign key (tenant_id, visit_id) references visit (tenant_id, id),
  add foreign key (tenant_id, equipment_id) references equipment (tenant_id, id);
alter table follow_up
  add foreign key (tenant_id, visit_id) references visit (tenant_id, id),
  add foreign key (tenant_id, visit_task_id) references visit_task (tenant_id, id),
  add foreign key (tenant_id, home_id) references home (tenant_id, id);
alter table amendment
  add foreign key (tenant_id, visit_id) references visit (tenant_id, id);
alter table unit_history
  add foreign key (tenant_id, visit_id) references visit (tenant_id, id),
  add foreign key (tenant_id, visit_task_id) references visit_task (tenant_id, id),
  add foreign key (tenant_id, home_id) references home (tenant_id, id),
  add foreign key (tenant_id, equipment_id) references equipment (tenant_id, id);
