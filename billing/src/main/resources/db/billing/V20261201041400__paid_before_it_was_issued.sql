-- What of a document was paid by the moment of its issuing; its paper and its message say so.
create table paid_before (
  tenant_id uuid not null default current_tenant(),
  id uuid not null default uuidv7(),
  invoice_id uuid not null,
  amount_minor bigint not null constraint something_was_paid_before check (amount_minor > 0),
  primary key (tenant_id, id),
  foreign key (tenant_id, invoice_id) references invoice (tenant_id, id),
  constraint paid_before_is_written_once unique (tenant_id, invoice_id)
);
call owned('paid_before');
revoke update, delete on paid_before from ${app};
