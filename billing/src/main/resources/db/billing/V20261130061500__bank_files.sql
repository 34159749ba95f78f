-- What the bank says came in and went out: each line once, whatever files it comes in, and what a person said it is.

-- How the bank's table is read; nothing of it for a bank whose file says so itself (OFX). Columns count from one.
create table bank (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  name text not null constraint bank_named check (trim(name) <> '' and length(name) <= 60),
  separator char(1) check (separator in (',', ';', '|', E'\t')),
  head_rows int check (head_rows between 0 and 20),
  day_column int check (day_column between 1 and 50),
  day_style text,
  amount_column int check (amount_column between 1 and 50),
  out_column int check (out_column between 1 and 50),
  decimal_comma boolean,
  words_columns int[],
  reference_column int check (reference_column between 1 and 50),
  primary key (tenant_id, id),
  constraint one_bank_a_name unique (tenant_id, name),
  constraint columns_are_mapped_whole check (num_nonnulls(separator, head_rows, day_column, day_style, amount_column,
    decimal_comma, words_columns) in (0, 7))
);
call owned('bank');

create table bank_line (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  bank_id uuid not null,
  key text not null,
  day date not null,
  amount_minor bigint not null constraint a_line_moves_money check (amount_minor <> 0),
  words text not null,
  reference text,
  primary key (tenant_id, id),
  foreign key (tenant_id, bank_id) references bank (tenant_id, id),
  constraint a_bank_line_is_kept_once unique (tenant_id, bank_id, key)
);
call owned('bank_line');
create index bank_line_by_day on bank_line (tenant_id, day);
revoke update, delete on bank_line from ${app};

-- What the line is: the payment booked from it, one noted before, or one that it took back.
create table bank_line_use (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  line_id uuid not null,
  payment_id uuid not null,
  how text not null check (how in ('booked', 'noted', 'returned')),
  why text not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, line_id) references bank_line (tenant_id, id),
  foreign key (tenant_id, payment_id) references payment (tenant_id, id)
);
call owned('bank_line_use');
create index bank_line_use_of_line on bank_line_use (tenant_id, line_id);
create index bank_line_use_of_payment on bank_line_use (tenant_id, payment_id);

-- A line that is no customer's money.
create table bank_line_dismissal (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  line_id uuid not null,
  why text not null constraint a_dismissal_says_why check (length(trim(why)) >= 3),
  primary key (tenant_id, id),
  foreign key (tenant_id, line_id) references bank_line (tenant_id, id),
  constraint a_line_is_dismissed_once unique (tenant_id, line_id)
);
call owned('bank_line_dismissal');
