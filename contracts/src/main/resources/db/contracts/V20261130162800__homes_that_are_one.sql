-- Two homes that are one: which lives on, what moved to it, and that it was undone. Nothing is written over.
create table home_merge (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  home_id uuid not null,
  other_id uuid not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, home_id) references home (tenant_id, id),
  foreign key (tenant_id, other_id) references home (tenant_id, id),
  constraint two_homes_are_merged check (home_id <> other_id)
);
call owned('home_merge');
create index home_merge_of on home_merge (tenant_id, other_id);
create index home_merge_into on home_merge (tenant_id, home_id);
revoke update, delete on home_merge from ${app};

-- A row that came along; what it was called where the name was taken, and what it is called since.
create table home_merge_move (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  merge_id uuid not null,
  table_name text not null check (table_name ~ '^[a-z_]{1,40}$'),
  row_id uuid not null,
  was_called text,
  is_called text,
  primary key (tenant_id, id),
  foreign key (tenant_id, merge_id) references home_merge (tenant_id, id),
  constraint a_row_moves_once unique (tenant_id, merge_id, table_name, row_id)
);
call owned('home_merge_move');
revoke update, delete on home_merge_move from ${app};

create table home_merge_undoing (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  merge_id uuid not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, merge_id) references home_merge (tenant_id, id),
  constraint a_merge_is_undone_once unique (tenant_id, merge_id)
);
call owned('home_merge_undoing');
revoke update, delete on home_merge_undoing from ${app};

-- Two that look like one and are two: they are not offered again.
create table homes_apart (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  home_id uuid not null,
  other_id uuid not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, home_id) references home (tenant_id, id),
  foreign key (tenant_id, other_id) references home (tenant_id, id),
  constraint two_homes_stay_two unique (tenant_id, home_id, other_id),
  constraint two_homes_apart check (home_id <> other_id)
);
call owned('homes_apart');
revoke update, delete on homes_apart from ${app};
