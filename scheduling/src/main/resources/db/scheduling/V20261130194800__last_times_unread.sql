-- When this was last done nobody knows: it is read on the machine at the first visit. Once it is known the row goes.
create table last_time_unread (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  home_id uuid not null,
  equipment_id uuid not null,
  task_code text not null check (task_code <> ''),
  primary key (tenant_id, id),
  foreign key (tenant_id, home_id) references home (tenant_id, id),
  foreign key (tenant_id, equipment_id) references equipment (tenant_id, id),
  constraint a_last_time_is_unread_once unique (tenant_id, equipment_id, task_code)
);
call owned('last_time_unread');
