-- A calendar's own way in: the digest of a secret that only the calendar holds. Never deleted: who could read is kept.
create table calendar_link (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  technician_id uuid,
  home_id uuid,
  language text not null check (language in ('en', 'fr')),
  secret_digest bytea not null check (octet_length(secret_digest) = 32),
  made_on date not null,
  revoked_on date,
  primary key (tenant_id, id),
  unique (tenant_id, secret_digest),
  foreign key (tenant_id, technician_id) references membership (tenant_id, person_id),
  foreign key (tenant_id, home_id) references home (tenant_id, id),
  constraint of_a_technician_or_of_a_home check (num_nonnulls(technician_id, home_id) = 1)
);
call owned('calendar_link');
create index calendar_link_of_technician on calendar_link (tenant_id, technician_id) where technician_id is not null;
create index calendar_link_of_home on calendar_link (tenant_id, home_id) where home_id is not null;
