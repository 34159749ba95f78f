-- A billing run issues all drafts that may be issued on a day, a batch a transaction. The list is written when it is begun;
-- a batch that is done has a row, and so has the end, so a run that was cut off goes on where it stood.
create table billing_run (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  day date not null,
  drafts int not null check (drafts > 0),
  batches int not null check (batches > 0),
  primary key (tenant_id, id)
);
call owned('billing_run');

create table billing_run_draft (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  run_id uuid not null,
  number int not null check (number > 0),
  position int not null check (position > 0),
  invoice_id uuid not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, run_id) references billing_run (tenant_id, id),
  constraint a_run_names_a_draft_once unique (tenant_id, run_id, number, position)
);
call owned('billing_run_draft');

create table billing_run_batch (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  run_id uuid not null,
  number int not null check (number > 0),
  issued int not null check (issued >= 0),
  joined int not null check (joined >= 0),
  refused int not null check (refused >= 0),
  primary key (tenant_id, id),
  foreign key (tenant_id, run_id) references billing_run (tenant_id, id),
  constraint a_batch_is_done_once unique (tenant_id, run_id, number)
);
call owned('billing_run_batch');

-- A draft that a run left as it was, and why, in both languages as it was true then.
create table billing_run_refusal (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  run_id uuid not null,
  invoice_id uuid not null,
  code text not null,
  why_en text not null,
  why_fr text not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, run_id) references billing_run (tenant_id, id),
  constraint a_run_refuses_a_draft_once unique (tenant_id, run_id, invoice_id)
);
call owned('billing_run_refusal');

create table billing_run_end (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  run_id uuid not null,
  how text not null check (how in ('done', 'halted')),
  primary key (tenant_id, id),
  foreign key (tenant_id, run_id) references billing_run (tenant_id, id),
  constraint a_run_ends_once unique (tenant_id, run_id)
);
call owned('billing_run_end');
revoke update, delete on billing_run_draft, billing_run_batch, billing_run_refusal, billing_run_end from ${app};
revoke delete on billing_run from ${app};

-- Which documents a run issued: the batch that they were written in is the run.
create index invoice_issue_of_batch on invoice_issue (tenant_id, batch) where batch is not null;

-- The businesses whose timer has a run to go on with.
create function businesses_with_open_runs() returns setof uuid language sql stable security definer
  set search_path = pg_catalog, public as $$
  select distinct r.tenant_id from billing_run r
   where not exists (select 1 from billing_run_end e where e.tenant_id = r.tenant_id and e.run_id = r.id)
$$;
revoke execute on function businesses_with_open_runs() from public;
grant execute on function businesses_with_open_runs() to ${lookup};
