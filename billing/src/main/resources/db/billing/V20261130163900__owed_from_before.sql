-- What a customer owed when the shop was taken over: no document of ours, its taxes reported in the old books.
create table opening_balance (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  customer_id uuid not null,
  since date not null,
  amount_minor bigint not null constraint an_opening_owes_something check (amount_minor > 0),
  currency char(3) not null,
  words text not null constraint an_opening_says_what check (length(words) between 1 and 200),
  primary key (tenant_id, id),
  foreign key (tenant_id, customer_id) references customer (tenant_id, id)
);
call owned('opening_balance');
create index opening_balance_of on opening_balance (tenant_id, customer_id);
revoke update on opening_balance from ${app};
