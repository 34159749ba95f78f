-- The hour that a customer was told: no plan moves it. It holds while the visit still has that day and hour.
create table hour_told (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  visit_id uuid not null,
  day date not null,
  starts time not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, visit_id) references visit (tenant_id, id),
  constraint an_hour_is_told_once unique (tenant_id, visit_id, day, starts)
);
call owned('hour_told');
revoke update, delete on hour_told from ${app};

-- A customer who must hear that their visit is not as it was; rung once somebody said so.
create table to_ring (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  visit_id uuid not null,
  was_day date not null,
  was_starts time not null,
  was_technician_id uuid not null,
  was_told boolean not null,
  why text not null check (why <> ''),
  primary key (tenant_id, id),
  foreign key (tenant_id, visit_id) references visit (tenant_id, id)
);
call owned('to_ring');

create table rung (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  ring_id uuid not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, ring_id) references to_ring (tenant_id, id),
  constraint rung_once unique (tenant_id, ring_id)
);
call owned('rung');
revoke update, delete on to_ring, rung from ${app};

-- The hours of a day change places together: the last word is spoken when all stand.
alter table appointment drop constraint technician_is_elsewhere,
  add constraint technician_is_elsewhere exclude using gist (tenant_id with =, technician_id with =, during with &&) deferrable;
