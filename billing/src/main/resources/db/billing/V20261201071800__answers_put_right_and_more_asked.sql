-- An answer written on the wrong estimate is taken back with its reason; it stays, and the estimate waits again.
alter table estimate_answer
  add column undone_at timestamptz,
  add column undone_by text,
  add column undone_why text,
  add constraint an_undone_answer_says_why check (
    (undone_at is null) = (undone_by is null) and (undone_at is null) = (undone_why is null) and trim(undone_why) <> ''),
  drop constraint an_estimate_is_answered_once;
create unique index an_estimate_is_answered_once on estimate_answer (tenant_id, estimate_id) where undone_at is null;
create index answers_of_estimate on estimate_answer (tenant_id, estimate_id);
grant update (undone_at, undone_by, undone_why) on estimate_answer to ${app};

create or replace function keep_offered_estimate() returns trigger language plpgsql as $$
declare
  named uuid := case when tg_table_name = 'estimate' then to_jsonb(old) ->> 'id'
                     else coalesce(to_jsonb(new), to_jsonb(old)) ->> 'estimate_id' end;
  tenant uuid := coalesce(to_jsonb(new), to_jsonb(old)) ->> 'tenant_id';
begin
  if tg_table_name = 'estimate' and tg_op = 'UPDATE'
      and to_jsonb(new) - 'home_id' = to_jsonb(old) - 'home_id'
      and exists (select 1 from home_merge m where m.tenant_id = tenant
                   and m.home_id in ((to_jsonb(old) ->> 'home_id')::uuid, (to_jsonb(new) ->> 'home_id')::uuid)
                   and m.other_id in ((to_jsonb(old) ->> 'home_id')::uuid, (to_jsonb(new) ->> 'home_id')::uuid)) then
    return new;
  end if;
  if exists (select 1 from estimate_offer o where o.tenant_id = tenant and o.estimate_id = named)
      or exists (select 1 from estimate_answer a where a.tenant_id = tenant and a.estimate_id = named and a.undone_at is null) then
    raise exception 'an offered estimate never changes'
      using errcode = '23514', constraint = 'an_offered_estimate_stands', table = tg_table_name;
  end if;
  return coalesce(new, old);
end $$;

-- The business asks for a yes to more: the whole amount before taxes from now on, and what for. The newest question counts.
create table estimate_asked_more (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  estimate_id uuid not null,
  asked_minor bigint not null check (asked_minor > 0),
  currency char(3) not null,
  words text not null constraint asking_for_more_says_for_what check (trim(words) <> ''),
  day date not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, estimate_id) references estimate (tenant_id, id)
);
call owned('estimate_asked_more');
create index asked_more_of_estimate on estimate_asked_more (tenant_id, estimate_id);
revoke update, delete on estimate_asked_more from ${app};

-- The customer's no to it; a yes is a yes to more like any other.
create table estimate_more_refused (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  asked_id uuid not null,
  by_name text not null constraint a_no_to_more_has_a_name check (trim(by_name) <> ''),
  at timestamptz not null,
  words text,
  primary key (tenant_id, id),
  foreign key (tenant_id, asked_id) references estimate_asked_more (tenant_id, id),
  constraint a_question_for_more_is_refused_once unique (tenant_id, asked_id)
);
call owned('estimate_more_refused');
revoke update, delete on estimate_more_refused from ${app};
