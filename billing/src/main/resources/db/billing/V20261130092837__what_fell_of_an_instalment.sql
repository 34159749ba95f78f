-- What of an instalment is no longer asked for since the agreement was settled; the rest of it stays a draft.
create table instalment_lessening (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  invoice_id uuid not null,
  day date not null,
  amount_minor bigint not null constraint a_lessening_takes_something check (amount_minor > 0),
  why text not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, invoice_id) references invoice (tenant_id, id),
  constraint an_instalment_is_lessened_once unique (tenant_id, invoice_id)
);
call owned('instalment_lessening');
revoke update, delete on instalment_lessening from ${app};
