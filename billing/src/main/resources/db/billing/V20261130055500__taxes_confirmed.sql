-- A rate that comes from memory issues nothing until the owner has read it in a source, on a day.
create table tax_confirmation (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  region text not null check (region ~ '^[A-Z]{2}-[A-Z0-9]{1,3}$'),
  property_use text not null check (property_use in ('any', 'residential', 'commercial')),
  work text not null check (work in ('any', 'maintenance', 'repair', 'installation')),
  contract_form text not null check (contract_form in ('any', 'plan', 'separate', 'lump_sum')),
  code text not null,
  percent numeric(7, 4) not null,
  valid_from date not null,
  source text not null constraint tax_confirmed_from_a_source check (trim(source) <> ''),
  read_on date not null,
  registration text,
  primary key (tenant_id, id),
  constraint tax_confirmed_once unique (tenant_id, region, property_use, work, contract_form, code, percent, valid_from)
);
call owned('tax_confirmation');
revoke update, delete on tax_confirmation from ${app};
