-- Where a technician's day begins and ends, and how long they stop for lunch.
create table technician_base (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  person_id uuid not null,
  address text not null check (address <> ''),
  latitude numeric(9, 6) not null constraint base_latitude check (latitude between -90 and 90),
  longitude numeric(9, 6) not null constraint base_longitude check (longitude between -180 and 180),
  lunch_minutes int not null default 30 constraint base_lunch check (lunch_minutes between 0 and 120),
  version int not null default 0,
  primary key (tenant_id, id),
  foreign key (tenant_id, person_id) references membership (tenant_id, person_id),
  constraint one_base_a_technician unique (tenant_id, person_id)
);
call owned('technician_base');
