-- What a household, or somebody for it, told of a filter between visits: how it looked, whether it was changed. Technicians' words
-- stand in their close-outs.
create table filter_look (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  home_id uuid not null,
  equipment_id uuid not null,
  household_task_id uuid,
  day date not null,
  found text check (found in ('clean', 'grey')),
  changed boolean not null,
  told_by text not null check (told_by <> ''),
  taken_back_on date,
  primary key (tenant_id, id),
  foreign key (tenant_id, home_id) references home (tenant_id, id),
  foreign key (tenant_id, equipment_id) references equipment (tenant_id, id),
  foreign key (tenant_id, household_task_id) references household_task (tenant_id, id),
  constraint a_look_says_something check (changed or found is not null),
  constraint one_look_a_task unique (tenant_id, household_task_id)
);
call owned('filter_look');
create index filter_look_of_a_unit on filter_look (tenant_id, equipment_id, day);

-- The chance of running dirty that the business accepts; without a row, 15 in a hundred.
create table accepted_chance (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  percent int not null constraint accepted_chance_percent check (percent between 1 and 50),
  version int not null default 0,
  primary key (tenant_id, id),
  constraint one_accepted_chance unique (tenant_id)
);
call owned('accepted_chance');
