-- A home that is shut from a day: the heat off, the water drained, nobody there. It opens again on a day of its own row.
create table home_shut (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  home_id uuid not null,
  from_day date not null,
  until_day date,
  heat_off boolean not null,
  water_drained boolean not null,
  note text check (note <> ''),
  primary key (tenant_id, id),
  foreign key (tenant_id, home_id) references home (tenant_id, id),
  constraint a_home_opens_after_it_is_shut check (until_day > from_day)
);
call owned('home_shut');
create index home_shut_of_a_home on home_shut (tenant_id, home_id);

create table home_opening (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  shut_id uuid not null,
  day date not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, shut_id) references home_shut (tenant_id, id),
  constraint a_home_opens_once unique (tenant_id, shut_id)
);
call owned('home_opening');
revoke update, delete on home_shut, home_opening from ${app};
