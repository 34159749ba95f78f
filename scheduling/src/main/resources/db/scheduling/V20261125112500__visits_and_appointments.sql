-- The year's visits of each home, what is done at each, how each ended, and whose day they stand in.

create table visit (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  home_id uuid not null,
  agreement_id uuid,
  kind text not null check (kind in ('plan', 'call', 'return', 'extra')),
  window_from date not null,
  window_until date not null,
  minutes int not null check (minutes >= 0),
  answers_id uuid,
  note text,
  primary key (tenant_id, id),
  constraint visit_window check (window_from < window_until),
  foreign key (tenant_id, agreement_id) references agreement (tenant_id, id),
  foreign key (tenant_id, answers_id) references visit (tenant_id, id)
);
call owned('visit');
create index visit_of_a_home on visit (tenant_id, home_id);
create index visit_of_an_agreement on visit (tenant_id, agreement_id);
create index visit_by_deadline on visit (tenant_id, window_until);

-- A line of a visit's checklist: the wording is the visit's own copy; body only where the business wrote the task itself.
create table visit_task (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  visit_id uuid not null,
  equipment_id uuid,
  task_code text not null,
  wording_en text not null,
  wording_fr text not null,
  who text not null check (who in ('household', 'technician')),
  ticket text check (ticket in ('refrigerant', 'gas', 'electrical')),
  minutes int not null check (minutes >= 0),
  due_from date not null,
  due_until date not null,
  act text not null default 'do' check (act in ('do', 'check', 'replace')),
  reason_en text not null,
  reason_fr text not null,
  basis text not null,
  body jsonb,
  position int not null default 0,
  primary key (tenant_id, id),
  constraint visit_task_window check (due_from < due_until),
  foreign key (tenant_id, visit_id) references visit (tenant_id, id)
);
call owned('visit_task');
create index visit_task_of_a_visit on visit_task (tenant_id, visit_id);

create table visit_ending (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  visit_id uuid not null,
  how text not null check (how in ('closed', 'cancelled', 'no_access', 'not_kept')),
  day date not null,
  why text,
  primary key (tenant_id, id),
  foreign key (tenant_id, visit_id) references visit (tenant_id, id),
  constraint visit_ended_once unique (tenant_id, visit_id),
  constraint visit_ending_says_why check (how = 'closed' or why <> '')
);
call owned('visit_ending');

create table household_task (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  home_id uuid not null,
  agreement_id uuid not null,
  equipment_id uuid,
  task_code text not null,
  wording_en text not null,
  wording_fr text not null,
  due_from date not null,
  due_on date not null,
  act text not null default 'do' check (act in ('do', 'check', 'replace')),
  done_on date,
  done_by text,
  primary key (tenant_id, id),
  constraint household_task_window check (due_from <= due_on),
  constraint household_task_done check ((done_on is null) = (done_by is null)),
  foreign key (tenant_id, agreement_id) references agreement (tenant_id, id)
);
call owned('household_task');
create index household_task_of_a_home on household_task (tenant_id, home_id, due_on);
create index household_task_of_an_agreement on household_task (tenant_id, agreement_id);

-- A promised window that no visit of the year touches, said by name instead of being forgotten.
create table unkept_promise (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  home_id uuid not null,
  agreement_id uuid not null,
  equipment_id uuid,
  task_code text not null,
  wording_en text not null,
  wording_fr text not null,
  due_from date not null,
  due_until date not null,
  why_en text not null,
  why_fr text not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, agreement_id) references agreement (tenant_id, id)
);
call owned('unkept_promise');
create index unkept_promise_of_an_agreement on unkept_promise (tenant_id, agreement_id);
create index unkept_promise_of_a_home on unkept_promise (tenant_id, home_id);

-- The year of an agreement is planned once; this row says it was, so that a season run again adds nothing.
create table year_planned (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  agreement_id uuid not null,
  visits int not null,
  tasks int not null,
  unkept int not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, agreement_id) references agreement (tenant_id, id),
  constraint a_year_is_planned_once unique (tenant_id, agreement_id)
);
call owned('year_planned');

create table appointment (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  visit_id uuid not null,
  technician_id uuid not null,
  day date not null,
  starts time not null,
  ends time not null,
  during tsrange not null generated always as (tsrange(day + starts, day + ends, '[)')) stored,
  version int not null default 0,
  primary key (tenant_id, id),
  constraint appointment_lasts check (starts < ends),
  foreign key (tenant_id, visit_id) references visit (tenant_id, id),
  foreign key (tenant_id, technician_id) references membership (tenant_id, person_id),
  constraint visit_has_a_day_already unique (tenant_id, visit_id),
  constraint technician_is_elsewhere exclude using gist (tenant_id with =, technician_id with =, during with &&)
);
call owned('appointment');
create index appointment_of_a_day on appointment (tenant_id, day, technician_id);

create table roster_hours (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  person_id uuid not null,
  weekday int not null check (weekday between 1 and 7),
  starts time not null,
  ends time not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, person_id) references membership (tenant_id, person_id),
  constraint roster_hours_last check (starts < ends),
  constraint roster_hours_once_a_weekday unique (tenant_id, person_id, weekday)
);
call owned('roster_hours');

-- A day off: of one person, or of the whole business when nobody is named.
create table day_off (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  person_id uuid,
  day date not null,
  why text not null check (why <> ''),
  primary key (tenant_id, id),
  foreign key (tenant_id, person_id) references membership (tenant_id, person_id),
  constraint one_day_off_a_day unique nulls not distinct (tenant_id, person_id, day)
);
call owned('day_off');
