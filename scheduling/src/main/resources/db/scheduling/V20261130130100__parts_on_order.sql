-- A visit waits for a part: what was ordered from whom, what came, who was told, the visit that uses it, what went back.
create table part_order (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  visit_id uuid not null,
  home_id uuid not null,
  equipment_id uuid,
  part_code text not null check (part_code <> ''),
  quantity numeric(14, 4) not null constraint part_order_quantity check (quantity > 0),
  supplier text not null check (supplier <> ''),
  ordered_on date not null,
  expected_on date not null,
  words text,
  version int not null default 0,
  primary key (tenant_id, id),
  foreign key (tenant_id, visit_id) references visit (tenant_id, id),
  foreign key (tenant_id, home_id) references home (tenant_id, id),
  foreign key (tenant_id, equipment_id) references equipment (tenant_id, id),
  constraint part_order_expected check (expected_on >= ordered_on)
);
call owned('part_order');
create index part_order_of_a_visit on part_order (tenant_id, visit_id);
create index part_order_of_a_home on part_order (tenant_id, home_id);
create index part_order_by_expected on part_order (tenant_id, expected_on);

-- What came, onto which place; the movement carries this id as its operation.
create table part_arrival (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  order_id uuid not null,
  place_id uuid not null,
  quantity numeric(14, 4) not null constraint part_arrival_quantity check (quantity > 0),
  day date not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, order_id) references part_order (tenant_id, id),
  foreign key (tenant_id, place_id) references stock_place (tenant_id, id)
);
call owned('part_arrival');
create index part_arrival_of_an_order on part_arrival (tenant_id, order_id);
revoke update, delete on part_arrival from ${app};

-- The customer was told: that it is here, or only that it is ordered.
create table part_told (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  order_id uuid not null,
  at timestamptz not null,
  how text not null check (how in ('call', 'message', 'person')),
  who text not null check (who <> ''),
  here boolean not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, order_id) references part_order (tenant_id, id)
);
call owned('part_told');
create index part_told_of_an_order on part_told (tenant_id, order_id);
revoke update, delete on part_told from ${app};

-- The visit that uses what was ordered. One that came to nothing is followed by another.
create table part_second_visit (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  order_id uuid not null,
  visit_id uuid not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, order_id) references part_order (tenant_id, id),
  foreign key (tenant_id, visit_id) references visit (tenant_id, id),
  constraint part_goes_once_to_a_visit unique (tenant_id, order_id, visit_id)
);
call owned('part_second_visit');
create index part_second_visit_of_a_visit on part_second_visit (tenant_id, visit_id);
revoke update, delete on part_second_visit from ${app};

-- What has not come will not come.
create table part_order_ending (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  order_id uuid not null,
  day date not null,
  why text not null check (why <> ''),
  primary key (tenant_id, id),
  foreign key (tenant_id, order_id) references part_order (tenant_id, id),
  constraint part_order_ends_once unique (tenant_id, order_id)
);
call owned('part_order_ending');
revoke update, delete on part_order_ending from ${app};

-- Wrong or unused: back to a place of ours, or to the supplier, who owes a credit for it.
create table part_return (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  order_id uuid not null,
  from_place_id uuid not null,
  to_place_id uuid,
  quantity numeric(14, 4) not null constraint part_return_quantity check (quantity > 0),
  day date not null,
  why text not null check (why in ('wrong', 'unused', 'faulty')),
  words text,
  credit_minor bigint check (credit_minor >= 0),
  currency char(3),
  primary key (tenant_id, id),
  foreign key (tenant_id, order_id) references part_order (tenant_id, id),
  foreign key (tenant_id, from_place_id) references stock_place (tenant_id, id),
  foreign key (tenant_id, to_place_id) references stock_place (tenant_id, id),
  constraint only_a_supplier_owes_a_credit check (to_place_id is null or credit_minor is null),
  constraint part_credit_has_its_currency check ((credit_minor is null) = (currency is null))
);
call owned('part_return');
create index part_return_of_an_order on part_return (tenant_id, order_id);
revoke update, delete on part_return from ${app};

create table part_credit (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  return_id uuid not null,
  day date not null,
  amount_minor bigint check (amount_minor > 0),
  currency char(3),
  words text,
  primary key (tenant_id, id),
  foreign key (tenant_id, return_id) references part_return (tenant_id, id),
  constraint a_return_is_credited_once unique (tenant_id, return_id),
  constraint credit_has_its_currency check ((amount_minor is null) = (currency is null)),
  constraint a_refused_credit_says_why check (amount_minor is not null or words <> '')
);
call owned('part_credit');
revoke update, delete on part_credit from ${app};
