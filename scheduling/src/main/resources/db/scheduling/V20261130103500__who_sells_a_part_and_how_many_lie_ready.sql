-- Whom the business buys a part from, as its buying list says it.
create table part_supplier (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  part_code text not null check (part_code <> ''),
  supplier text not null check (supplier <> ''),
  primary key (tenant_id, id),
  constraint one_supplier_a_part unique (tenant_id, part_code)
);
call owned('part_supplier');

-- How many of a part a shelf or a van should always hold.
create table part_minimum (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  part_code text not null check (part_code <> ''),
  place_id uuid not null,
  quantity numeric(14, 4) not null check (quantity > 0 and quantity <= 99999),
  primary key (tenant_id, id),
  foreign key (tenant_id, place_id) references stock_place (tenant_id, id),
  constraint one_minimum_a_part_and_place unique (tenant_id, part_code, place_id)
);
call owned('part_minimum');
create index part_minimum_of_place on part_minimum (tenant_id, place_id);
