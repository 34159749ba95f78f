-- An hour that moved away and came back is told only if the customer was told it since: what they heard last counts.
alter table hour_told drop constraint an_hour_is_told_once;
create index hour_told_of_a_visit on hour_told (tenant_id, visit_id);

create view hour_standing with (security_invoker = true) as
  select t.tenant_id, t.id, t.visit_id, t.day, t.starts, t.at from hour_told t
   where not exists (
     select from appointment_move m where m.tenant_id = t.tenant_id and m.visit_id = t.visit_id and m.made_at > t.made_at
        and (m.day is distinct from m.was_day or m.starts is distinct from m.was_starts));
grant select on hour_standing to ${app};

-- The move that is being made was written before it: it takes nothing from what was told until then.
create or replace function a_told_hour_moves_for_a_reason() returns trigger language plpgsql as $$
begin
  if tg_op = 'UPDATE' and (new.day, new.starts) = (old.day, old.starts) then
    return null;
  end if;
  if exists (select 1 from hour_told t where t.tenant_id = old.tenant_id and t.visit_id = old.visit_id
               and t.day = old.day and t.starts = old.starts
               and not exists (select 1 from appointment_move m where m.tenant_id = t.tenant_id
                 and m.visit_id = t.visit_id and m.made_at > t.made_at and m.made_at <> now()
                 and (m.day is distinct from m.was_day or m.starts is distinct from m.was_starts)))
     and not exists (select 1 from appointment_move m where m.tenant_id = old.tenant_id and m.visit_id = old.visit_id
               and m.was_day = old.day and m.was_starts = old.starts and m.why is not null and m.made_at = now())
     and not exists (select 1 from visit_ending e where e.tenant_id = old.tenant_id and e.visit_id = old.visit_id) then
    raise exception 'the customer was told this hour' using errcode = '23514', constraint = 'a_told_hour_moves_for_a_reason';
  end if;
  return null;
end $$;

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
        exists (select 1 from hour_standing t where t.tenant_id = tenant and t.visit_id = visit
                   and t.day = new.day and t.starts = new.starts))
      on conflict on constraint one_entry_a_visit_and_technician do update
        set day = excluded.day, starts = excluded.starts, ends = excluded.ends, cancelled = false,
            goes_along = excluded.goes_along, confirmed = excluded.confirmed,
            sequence = excluded.sequence, changed_at = now();
  end if;
  return null;
end $$;
