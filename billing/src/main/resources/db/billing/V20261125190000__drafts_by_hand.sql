-- A person may write, change and take off a draft's lines, and discard a draft with a reason.

-- What a person wrote stays as they wrote it. The product keeps beside it what it had reckoned itself, so that a check
-- and an amended visit can still compare; a line that a person added has nothing reckoned.
alter table invoice_line
  add column by_hand boolean not null default false,
  add column reckoned_quantity numeric(14, 4),
  add column reckoned_minor bigint,
  add column visit_changed boolean not null default false,
  add constraint reckoned_beside_the_hands_own check (by_hand or (reckoned_minor is null and not visit_changed)),
  add constraint reckoned_whole check ((reckoned_quantity is null) = (reckoned_minor is null));

-- A reckoned line that a person took off: it is not written again when its visit is amended.
create table line_taken_off (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  invoice_id uuid not null,
  visit_id uuid,
  kind text not null,
  item_code text,
  coverage text not null,
  words_en text not null,
  words_fr text not null,
  reckoned_quantity numeric(14, 4) not null,
  reckoned_minor bigint not null,
  visit_changed boolean not null default false,
  primary key (tenant_id, id),
  foreign key (tenant_id, invoice_id) references invoice (tenant_id, id),
  foreign key (tenant_id, visit_id) references visit (tenant_id, id)
);
call owned('line_taken_off');
create index line_taken_off_of_invoice on line_taken_off (tenant_id, invoice_id);

-- A draft that is not asked for: by whom, on which day and why. It stays to be read, and is never issued.
create table invoice_discard (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  invoice_id uuid not null,
  day date not null,
  why text not null constraint a_discard_says_why check (length(trim(why)) >= 3),
  primary key (tenant_id, id),
  foreign key (tenant_id, invoice_id) references invoice (tenant_id, id),
  constraint a_draft_is_discarded_once unique (tenant_id, invoice_id)
);
call owned('invoice_discard');
revoke update, delete on invoice_discard from ${app};

create function discard_no_issued() returns trigger language plpgsql as $$
begin
  perform 1 from invoice i where i.tenant_id = new.tenant_id and i.id = new.invoice_id for update;
  if exists (select 1 from invoice_issue s where s.tenant_id = new.tenant_id and s.invoice_id = new.invoice_id) then
    perform say_issued_never_changes(tg_table_name);
  end if;
  return new;
end $$;
create trigger issued_never_changes before insert on invoice_discard
  for each row execute function discard_no_issued();

create function say_discarded_never_changes(named text) returns void language plpgsql as $$
begin
  raise exception 'a discarded draft never changes'
    using errcode = '23514', constraint = 'discarded_never_changes', table = named;
end $$;

create function keep_discarded() returns trigger language plpgsql as $$
begin
  if exists (select 1 from invoice_discard d where d.tenant_id = old.tenant_id and d.invoice_id = old.id) then
    perform say_discarded_never_changes(tg_table_name);
  end if;
  return case tg_op when 'DELETE' then old else new end;
end $$;
create trigger discarded_never_changes before update or delete on invoice
  for each row execute function keep_discarded();

create function keep_part_of_discarded() returns trigger language plpgsql as $$
begin
  if exists (select 1 from invoice_discard d where d.tenant_id = old.tenant_id and d.invoice_id = old.invoice_id) then
    perform say_discarded_never_changes(tg_table_name);
  end if;
  return case tg_op when 'DELETE' then old else new end;
end $$;
create trigger discarded_never_changes before update or delete on invoice_line
  for each row execute function keep_part_of_discarded();

create function add_nothing_to_discarded() returns trigger language plpgsql as $$
begin
  if exists (select 1 from added a
      join invoice_discard d on d.tenant_id = a.tenant_id and d.invoice_id = a.invoice_id) then
    perform say_discarded_never_changes(tg_table_name);
  end if;
  return null;
end $$;
create trigger discarded_gets_nothing_more after insert on invoice_line referencing new table as added
  for each statement execute function add_nothing_to_discarded();
create trigger discarded_is_never_issued after insert on invoice_issue referencing new table as added
  for each statement execute function add_nothing_to_discarded();
