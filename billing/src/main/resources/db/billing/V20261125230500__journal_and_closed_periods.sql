-- The accountant's own codes for what the journal moves, and the days up to which the books are closed.

create table account_code (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  role text not null constraint account_role_said check (role <> '' and length(role) <= 120),
  code text not null constraint account_code_said check (trim(code) <> '' and length(code) <= 40),
  primary key (tenant_id, id),
  constraint one_code_a_role unique (tenant_id, role)
);
call owned('account_code');

-- Nothing bears a day up to this one any more.
create table period_close (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  until_day date not null,
  primary key (tenant_id, id)
);
call owned('period_close');

create table period_reopening (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  close_id uuid not null,
  why text not null constraint a_reopening_says_why check (length(trim(why)) >= 3),
  primary key (tenant_id, id),
  foreign key (tenant_id, close_id) references period_close (tenant_id, id),
  constraint a_period_is_reopened_once unique (tenant_id, close_id)
);
call owned('period_reopening');

-- What stood invoiced and earned of each agreement when the period was closed: what is amended later goes into the next one.
create table earned_at_close (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  close_id uuid not null,
  agreement_id uuid not null,
  invoiced_minor bigint not null,
  earned_minor bigint not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, close_id) references period_close (tenant_id, id),
  foreign key (tenant_id, agreement_id) references agreement (tenant_id, id),
  constraint earned_once_a_close unique (tenant_id, close_id, agreement_id)
);
call owned('earned_at_close');
revoke update, delete on period_close, period_reopening, earned_at_close from ${app};

-- Whoever closes a period waits for who is writing, and the other way round.
create function keep_closed_period() returns trigger language plpgsql as $$
begin
  perform pg_advisory_xact_lock_shared(hashtextextended('closing ' || current_tenant()::text, 0));
  if exists (
    select 1 from added a
      join period_close c on c.tenant_id = a.tenant_id and a.day <= c.until_day
     where not exists (select 1 from period_reopening r where r.tenant_id = c.tenant_id and r.close_id = c.id)) then
    raise exception 'the period is closed'
      using errcode = '23514', constraint = 'period_is_closed', table = tg_table_name;
  end if;
  return null;
end $$;
create trigger nothing_in_a_closed_period after insert on invoice_issue referencing new table as added
  for each statement execute function keep_closed_period();
create trigger nothing_in_a_closed_period after insert on payment referencing new table as added
  for each statement execute function keep_closed_period();
create trigger nothing_in_a_closed_period after insert on payment_undoing referencing new table as added
  for each statement execute function keep_closed_period();
create trigger nothing_in_a_closed_period after insert on payment_allocation referencing new table as added
  for each statement execute function keep_closed_period();
