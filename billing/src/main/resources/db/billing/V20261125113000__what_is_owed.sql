-- What is owed: prices, the business's own taxes, invoices with their numbers and hash chain, payments.

create table price (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  item_kind text not null check (item_kind in ('part', 'labour', 'travel')),
  item_code text not null check (item_code <> ''),
  price_minor bigint not null constraint price_not_negative check (price_minor >= 0),
  cost_minor bigint constraint cost_not_negative check (cost_minor >= 0),
  currency char(3) not null,
  valid_from date not null,
  primary key (tenant_id, id),
  constraint one_price_a_day unique (tenant_id, item_kind, item_code, valid_from)
);
call owned('price');

-- A tax of a place that the shipped table does not know, or knows otherwise: with its source.
create table own_tax (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  region text not null constraint own_tax_region_shape check (region ~ '^[A-Z]{2}-[A-Z0-9]{1,3}$'),
  property_use text not null check (property_use in ('any', 'residential', 'commercial')),
  work text not null check (work in ('any', 'maintenance', 'repair', 'installation')),
  contract_form text not null check (contract_form in ('any', 'plan', 'separate', 'lump_sum')),
  position int not null default 1,
  code text not null constraint own_tax_code_shape check (code ~ '^[a-z][a-z0-9_]{1,19}$'),
  label_en text not null check (label_en <> ''),
  label_fr text not null check (label_fr <> ''),
  category text not null check (category in ('S', 'Z', 'E', 'AE', 'K', 'G', 'O', 'L', 'M', 'B')),
  percent numeric(7, 4) not null constraint own_tax_percent check (percent between 0 and 100),
  registration text,
  valid_from date not null,
  valid_until date,
  source text not null constraint own_tax_has_a_source check (trim(source) <> ''),
  primary key (tenant_id, id),
  constraint own_tax_days check (valid_until is null or valid_until >= valid_from),
  constraint one_own_tax_a_day unique (tenant_id, region, property_use, work, contract_form, code, valid_from)
);
call owned('own_tax');

-- A document in the making; what makes it final is a row of invoice_issue.
create table invoice (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  kind text not null check (kind in ('plan', 'visit', 'deposit', 'credit')),
  credits_id uuid,
  customer_id uuid not null,
  home_id uuid,
  agreement_id uuid,
  visit_id uuid,
  visit_version int,
  instalment int,
  instalments int,
  language char(2) not null check (language in ('en', 'fr')),
  currency char(3) not null,
  may_issue_from date not null,
  awaits_first_visit boolean not null default false,
  purchase_order text,
  due_days int not null check (due_days between 0 and 365),
  reason_en text,
  reason_fr text,
  subtotal_minor bigint not null constraint invoice_not_negative check (subtotal_minor >= 0),
  version int not null default 0,
  primary key (tenant_id, id),
  foreign key (tenant_id, credits_id) references invoice (tenant_id, id),
  constraint a_credit_corrects_an_invoice check ((kind = 'credit') = (credits_id is not null)),
  constraint one_invoice_an_instalment unique (tenant_id, agreement_id, instalment),
  constraint one_invoice_a_visit unique (tenant_id, visit_id, visit_version)
);
call owned('invoice');
create index invoice_of_customer on invoice (tenant_id, customer_id);
create index invoice_of_home on invoice (tenant_id, home_id);
create index invoice_credits on invoice (tenant_id, credits_id) where credits_id is not null;
create index invoice_awaiting on invoice (tenant_id, agreement_id) where awaits_first_visit;

create table invoice_line (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  invoice_id uuid not null,
  position int not null check (position > 0),
  home_id uuid,
  agreement_id uuid,
  visit_id uuid,
  day date not null,
  kind text not null check (kind in ('plan', 'labour', 'part', 'travel', 'deposit', 'other')),
  item_code text,
  part_kind text,
  coverage text not null check (coverage in ('billable', 'included', 'discounted')),
  work text not null check (work in ('maintenance', 'repair', 'installation')),
  contract_form text not null check (contract_form in ('plan', 'separate', 'lump_sum')),
  words_en text not null,
  words_fr text not null,
  why_en text not null,
  why_fr text not null,
  quantity numeric(12, 3) not null check (quantity > 0),
  unit text not null check (unit ~ '^[A-Z0-9]{2,3}$'),
  unit_price_minor bigint,
  discount_percent numeric(5, 2) not null default 0 check (discount_percent between 0 and 100),
  discount_minor bigint not null default 0,
  net_minor bigint not null constraint line_not_negative check (net_minor >= 0),
  primary key (tenant_id, id),
  foreign key (tenant_id, invoice_id) references invoice (tenant_id, id),
  constraint one_line_a_position unique (tenant_id, invoice_id, position)
);
call owned('invoice_line');
create index invoice_line_of_visit on invoice_line (tenant_id, visit_id) where visit_id is not null;
create index invoice_line_of_agreement on invoice_line (tenant_id, agreement_id) where agreement_id is not null;

-- One row a tax of an issued document: what was charged, on how much, and by which source.
create table invoice_tax (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  invoice_id uuid not null,
  position int not null check (position > 0),
  code text not null,
  label_en text not null,
  label_fr text not null,
  category text not null,
  percent numeric(7, 4) not null,
  base_minor bigint not null,
  amount_minor bigint not null,
  region text not null,
  registration text,
  source text not null,
  lines int[] not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, invoice_id) references invoice (tenant_id, id),
  constraint one_tax_a_position unique (tenant_id, invoice_id, position)
);
call owned('invoice_tax');

-- The issue of a document: its number, its day, and everything printed on it, copied.
create table invoice_issue (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  invoice_id uuid not null,
  kind text not null,
  customer_id uuid not null,
  home_id uuid,
  credits_id uuid,
  series text not null,
  number bigint not null check (number > 0),
  label text not null,
  day date not null,
  tax_day date not null,
  due_day date not null,
  language char(2) not null,
  currency char(3) not null,
  subtotal_minor bigint not null,
  tax_minor bigint not null,
  total_minor bigint not null,
  seller json not null,
  buyer json not null,
  works json not null,
  purchase_order text,
  reason_en text,
  reason_fr text,
  previous_hash bytea not null check (length(previous_hash) = 32),
  hash bytea not null check (length(hash) = 32),
  primary key (tenant_id, id),
  foreign key (tenant_id, invoice_id) references invoice (tenant_id, id),
  constraint invoice_issued_once unique (tenant_id, invoice_id),
  constraint number_given_once unique (tenant_id, series, number),
  constraint label_given_once unique (tenant_id, label),
  constraint lines_and_taxes_are_the_total check (subtotal_minor + tax_minor = total_minor)
);
call owned('invoice_issue');
create index invoice_issue_of_customer on invoice_issue (tenant_id, customer_id, day);
create index invoice_issue_credits on invoice_issue (tenant_id, credits_id) where credits_id is not null;
create index invoice_issue_by_day on invoice_issue (tenant_id, day);

-- The last number and the last hash of each series: the row that issuing waits for.
create table number_counter (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  series text not null check (series <> ''),
  first_number bigint not null check (first_number > 0),
  last_number bigint not null,
  last_hash bytea not null check (length(last_hash) = 32),
  primary key (tenant_id, id),
  constraint one_counter_a_series unique (tenant_id, series),
  check (last_number >= first_number - 1)
);
call owned('number_counter');

-- How the business writes its numbers, F-{year}-{number:4}; without a row the language's own way holds.
create table numbering (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  kind text not null check (kind in ('invoice', 'credit')),
  pattern text not null,
  primary key (tenant_id, id),
  constraint one_pattern_a_kind unique (tenant_id, kind)
);
call owned('numbering');

-- An issued document never changes. A draft's change waits for an issue in progress, then is refused.
create function say_issued_never_changes(named text) returns void language plpgsql as $$
begin
  raise exception 'an issued document never changes'
    using errcode = '23514', constraint = 'issued_never_changes', table = named;
end $$;

create function keep_issued_invoice() returns trigger language plpgsql as $$
begin
  if exists (select 1 from invoice_issue s where s.tenant_id = old.tenant_id and s.invoice_id = old.id) then
    perform say_issued_never_changes(tg_table_name);
  end if;
  return case tg_op when 'DELETE' then old else new end;
end $$;
create trigger issued_never_changes before update or delete on invoice
  for each row execute function keep_issued_invoice();

create function keep_part_of_issued() returns trigger language plpgsql as $$
begin
  perform 1 from invoice i where i.tenant_id = old.tenant_id and i.id = old.invoice_id for key share;
  if exists (select 1 from invoice_issue s where s.tenant_id = old.tenant_id and s.invoice_id = old.invoice_id) then
    perform say_issued_never_changes(tg_table_name);
  end if;
  return case tg_op when 'DELETE' then old else new end;
end $$;
create trigger issued_never_changes before update or delete on invoice_line
  for each row execute function keep_part_of_issued();
create trigger issued_never_changes before update or delete on invoice_tax
  for each row execute function keep_part_of_issued();

create function add_nothing_to_issued() returns trigger language plpgsql as $$
begin
  if exists (select 1 from added a
      join invoice_issue s on s.tenant_id = a.tenant_id and s.invoice_id = a.invoice_id) then
    perform say_issued_never_changes(tg_table_name);
  end if;
  return null;
end $$;
create trigger issued_gets_nothing_more after insert on invoice_line referencing new table as added
  for each statement execute function add_nothing_to_issued();
create trigger issued_gets_nothing_more after insert on invoice_tax referencing new table as added
  for each statement execute function add_nothing_to_issued();

create function keep_issue() returns trigger language plpgsql as $$
begin
  perform say_issued_never_changes(tg_table_name);
  return null;
end $$;
create trigger issued_never_changes before update or delete on invoice_issue
  for each row execute function keep_issue();
create trigger issued_is_never_emptied before truncate on invoice_issue
  for each statement execute function keep_issue();
create trigger issued_is_never_emptied before truncate on invoice_tax
  for each statement execute function keep_issue();
create trigger issued_is_never_emptied before truncate on invoice_line
  for each statement execute function keep_issue();
create trigger issued_is_never_emptied before truncate on invoice
  for each statement execute function keep_issue();
revoke update, delete on invoice_issue, invoice_tax from ${app};
revoke delete on number_counter from ${app};

-- Money that came in (payment) or went back (refund). What went back to the bank unpaid is a row of payment_undoing.
create table payment (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  kind text not null check (kind in ('payment', 'refund')),
  customer_id uuid not null,
  day date not null,
  way text not null check (way in ('cash', 'card', 'cheque', 'transfer', 'debit', 'other')),
  amount_minor bigint not null constraint payment_positive check (amount_minor > 0),
  rounding_minor bigint not null default 0 constraint rounding_within_two_cents check (rounding_minor between -2 and 2),
  currency char(3) not null,
  reference text,
  note text,
  primary key (tenant_id, id),
  constraint only_cash_is_rounded check (way = 'cash' or rounding_minor = 0)
);
call owned('payment');
create index payment_of_customer on payment (tenant_id, customer_id, day);

create table payment_undoing (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  payment_id uuid not null,
  day date not null,
  how text not null check (how in ('bounced', 'mistake')),
  why text not null check (trim(why) <> ''),
  primary key (tenant_id, id),
  foreign key (tenant_id, payment_id) references payment (tenant_id, id),
  constraint a_payment_is_undone_once unique (tenant_id, payment_id)
);
call owned('payment_undoing');

-- Which document a payment pays, and how much of it.
create table payment_allocation (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  payment_id uuid not null,
  invoice_id uuid not null,
  amount_minor bigint not null constraint allocation_positive check (amount_minor > 0),
  day date not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, payment_id) references payment (tenant_id, id),
  foreign key (tenant_id, invoice_id) references invoice (tenant_id, id),
  constraint one_allocation_a_document unique (tenant_id, payment_id, invoice_id)
);
call owned('payment_allocation');
create index payment_allocation_of_invoice on payment_allocation (tenant_id, invoice_id);
