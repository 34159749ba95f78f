-- The number from which agreements count on, for a business that numbered them before it came here.
create table agreement_numbers (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  first_number int not null check (first_number between 1 and 100000000),
  primary key (tenant_id, id),
  constraint agreements_count_from_one_number unique (tenant_id)
);
call owned('agreement_numbers');
