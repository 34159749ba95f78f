-- The hours of a week are read from visits. Whoever worked them corrects a day with a reason, and signs the week's minutes; a
-- correction after that asks for another signature.
create table hours_correction (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  person_id uuid not null,
  day date not null,
  minutes int not null check (minutes between 0 and 1440),
  why text not null check (why <> ''),
  primary key (tenant_id, id),
  foreign key (tenant_id, person_id) references membership (tenant_id, person_id)
);
call owned('hours_correction');
create index hours_correction_of_a_day on hours_correction (tenant_id, day, person_id);

create table hours_signature (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  person_id uuid not null,
  monday date not null,
  minutes int not null check (minutes >= 0),
  at timestamptz not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, person_id) references membership (tenant_id, person_id)
);
call owned('hours_signature');
create index hours_signature_of_a_week on hours_signature (tenant_id, monday, person_id);
revoke update, delete on hours_correction, hours_signature from ${app};
