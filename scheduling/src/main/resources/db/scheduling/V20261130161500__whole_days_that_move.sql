-- A whole day that fell away: for what cause, and where each of its visits went or whether it went back to the season.
create table whole_day (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  day date not null,
  cause text not null check (cause in ('storm', 'roads', 'power', 'breakdown', 'crew')),
  why text not null check (why <> ''),
  primary key (tenant_id, id)
);
call owned('whole_day');
create index whole_day_of_a_day on whole_day (tenant_id, day);

create table whole_day_visit (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  whole_day_id uuid not null,
  visit_id uuid not null,
  customer_id uuid,
  was_technician_id uuid not null,
  was_starts time not null,
  told boolean not null,
  technician_id uuid,
  day date,
  starts time,
  standing text not null check (standing in ('kept', 'late', 'open', 'over')),
  primary key (tenant_id, id),
  foreign key (tenant_id, whole_day_id) references whole_day (tenant_id, id),
  foreign key (tenant_id, visit_id) references visit (tenant_id, id),
  foreign key (tenant_id, customer_id) references customer (tenant_id, id),
  constraint a_visit_leaves_a_day_once unique (tenant_id, whole_day_id, visit_id),
  constraint a_visit_goes_somewhere_or_nowhere check (
    (technician_id is null) = (day is null) and (day is null) = (starts is null))
);
call owned('whole_day_visit');
create index whole_day_visit_of_a_visit on whole_day_visit (tenant_id, visit_id);
revoke update, delete on whole_day, whole_day_visit from ${app};
