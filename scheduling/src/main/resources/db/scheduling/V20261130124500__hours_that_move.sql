-- What becomes of an hour that a visit had. It was told to the customer at a moment; it moved, or was taken off, and a told
-- hour does so for a reason only: why, in whose name, asked by whom.
alter table hour_told add column at timestamptz not null default now();

create table appointment_move (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  visit_id uuid not null,
  was_technician_id uuid not null,
  was_day date not null,
  was_starts time not null,
  technician_id uuid,
  day date,
  starts time,
  told boolean not null,
  asked_by text check (asked_by in ('customer', 'us')),
  why text check (why <> ''),
  at timestamptz not null default now(),
  primary key (tenant_id, id),
  foreign key (tenant_id, visit_id) references visit (tenant_id, id),
  constraint a_move_leads_somewhere_or_nowhere check (
    (technician_id is null) = (day is null) and (day is null) = (starts is null)),
  constraint a_reason_of_somebody check ((why is null) = (asked_by is null)),
  constraint a_told_hour_moves_for_a_reason check (
    not told or why is not null or (day is not null and day = was_day and starts = was_starts))
);
call owned('appointment_move');
create index appointment_move_of_a_visit on appointment_move (tenant_id, visit_id);
create index appointment_move_of_a_day on appointment_move (tenant_id, was_day);
revoke update, delete on appointment_move from ${app};

-- Whoever writes: a told hour leaves its visit with a reason of the same transaction, or because the visit has ended.
create function a_told_hour_moves_for_a_reason() returns trigger language plpgsql as $$
begin
  if tg_op = 'UPDATE' and (new.day, new.starts) = (old.day, old.starts) then
    return null;
  end if;
  if exists (select 1 from hour_told t where t.tenant_id = old.tenant_id and t.visit_id = old.visit_id
               and t.day = old.day and t.starts = old.starts)
     and not exists (select 1 from appointment_move m where m.tenant_id = old.tenant_id and m.visit_id = old.visit_id
               and m.was_day = old.day and m.was_starts = old.starts and m.why is not null and m.made_at = now())
     and not exists (select 1 from visit_ending e where e.tenant_id = old.tenant_id and e.visit_id = old.visit_id) then
    raise exception 'the customer was told this hour' using errcode = '23514', constraint = 'a_told_hour_moves_for_a_reason';
  end if;
  return null;
end $$;
create trigger a_told_hour_moves_for_a_reason after update or delete on appointment
  for each row execute function a_told_hour_moves_for_a_reason();

-- Calendars: an hour that was told is certain, one that was not may move still; whoever goes along has it in theirs too.
alter table calendar_entry
  add column confirmed boolean not null default false,
  add column goes_along boolean not null default false;

create or replace function tell_the_calendars() returns trigger language plpgsql as $$
declare
  visit uuid := case when tg_op = 'DELETE' then old.visit_id else new.visit_id end;
  tenant uuid := case when tg_op = 'DELETE' then old.tenant_id else new.tenant_id end;
  along boolean := tg_table_name = 'appointment_second';
  next_sequence int;
begin
  if tg_op = 'UPDATE' and (new.technician_id, new.day, new.starts, new.ends)
      is not distinct from (old.technician_id, old.day, old.starts, old.ends) then
    return null;
  end if;
  select coalesce(max(sequence) + 1, 0) into next_sequence
    from calendar_entry where tenant_id = tenant and visit_id = visit;
  if tg_op = 'DELETE' or (tg_op = 'UPDATE' and new.technician_id <> old.technician_id) then
    update calendar_entry set cancelled = true, sequence = next_sequence, changed_at = now()
     where tenant_id = tenant and visit_id = visit and technician_id = old.technician_id and goes_along = along;
  end if;
  if tg_op <> 'DELETE' then
    insert into calendar_entry (tenant_id, visit_id, technician_id, day, starts, ends, sequence, goes_along, confirmed)
      values (tenant, visit, new.technician_id, new.day, new.starts, new.ends, next_sequence, along,
        exists (select 1 from hour_told t where t.tenant_id = tenant and t.visit_id = visit
                   and t.day = new.day and t.starts = new.starts))
      on conflict on constraint one_entry_a_visit_and_technician do update
        set day = excluded.day, starts = excluded.starts, ends = excluded.ends, cancelled = false,
            goes_along = excluded.goes_along, confirmed = excluded.confirmed,
            sequence = excluded.sequence, changed_at = now();
  end if;
  return null;
end $$;

create trigger tell_the_calendars after insert or update or delete on appointment_second
  for each row execute function tell_the_calendars();

create function tell_that_it_is_certain() returns trigger language plpgsql as $$
begin
  update calendar_entry e set confirmed = true, changed_at = now(), sequence = 1 + (
      select max(o.sequence) from calendar_entry o where o.tenant_id = e.tenant_id and o.visit_id = e.visit_id)
   where e.tenant_id = new.tenant_id and e.visit_id = new.visit_id and e.day = new.day and e.starts = new.starts
     and not e.cancelled and not e.confirmed;
  return null;
end $$;
create trigger tell_that_it_is_certain after insert on hour_told
  for each row execute function tell_that_it_is_certain();

update calendar_entry e set confirmed = true from hour_told t
 where t.tenant_id = e.tenant_id and t.visit_id = e.visit_id and t.day = e.day and t.starts = e.starts;
insert into calendar_entry (tenant_id, visit_id, technician_id, day, starts, ends, sequence, goes_along)
  select tenant_id, visit_id, technician_id, day, starts, ends, 0, true from appointment_second
  on conflict on constraint one_entry_a_visit_and_technician do nothing;
