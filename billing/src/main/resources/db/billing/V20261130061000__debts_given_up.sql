-- What is given up of a document, and below nought what was taken back of it: dated rows, so that no earlier day changes.
create table write_off (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  invoice_id uuid not null,
  day date not null,
  amount_minor bigint not null constraint write_off_moves check (amount_minor <> 0),
  why text constraint a_write_off_says_why check (length(trim(why)) >= 3),
  takes_back uuid,
  payment_id uuid,
  credit_id uuid,
  primary key (tenant_id, id),
  foreign key (tenant_id, invoice_id) references invoice (tenant_id, id),
  foreign key (tenant_id, takes_back) references write_off (tenant_id, id),
  foreign key (tenant_id, payment_id) references payment (tenant_id, id),
  foreign key (tenant_id, credit_id) references invoice (tenant_id, id),
  constraint only_what_is_taken_back_is_below_nought check ((amount_minor < 0) = (takes_back is not null)),
  constraint somebody_or_money_takes_back check (why is not null or payment_id is not null or credit_id is not null)
);
call owned('write_off');
create index write_off_of_invoice on write_off (tenant_id, invoice_id);
create index write_off_by_day on write_off (tenant_id, day);
create index write_off_taken_back on write_off (tenant_id, takes_back) where takes_back is not null;
create index write_off_of_payment on write_off (tenant_id, payment_id) where payment_id is not null;
create index write_off_of_credit on write_off (tenant_id, credit_id) where credit_id is not null;

-- Its part of each tax of the document.
create table write_off_tax (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  write_off_id uuid not null,
  invoice_tax_id uuid not null,
  base_minor bigint not null,
  amount_minor bigint not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, write_off_id) references write_off (tenant_id, id),
  foreign key (tenant_id, invoice_tax_id) references invoice_tax (tenant_id, id),
  constraint one_share_a_tax unique (tenant_id, write_off_id, invoice_tax_id)
);
call owned('write_off_tax');
create index write_off_tax_of_tax on write_off_tax (tenant_id, invoice_tax_id);
revoke update, delete on write_off, write_off_tax from ${app};

create trigger nothing_in_a_closed_period after insert on write_off referencing new table as added
  for each statement execute function keep_closed_period();
