-- A customer's statement of a period as it was made: what stood before, what moved, what stood after.
create table account_statement (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  customer_id uuid not null,
  from_day date not null,
  until_day date not null,
  day date not null,
  language char(2) not null check (language in ('en', 'fr')),
  currency char(3) not null,
  opening_minor bigint not null,
  closing_minor bigint not null,
  lines json not null,
  buyer json not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, customer_id) references customer (tenant_id, id),
  constraint a_statement_goes_forward check (until_day >= from_day),
  constraint one_statement_a_day unique (tenant_id, customer_id, from_day, until_day, day)
);
call owned('account_statement');
revoke update, delete on account_statement from ${app};
