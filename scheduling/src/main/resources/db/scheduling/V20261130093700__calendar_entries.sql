-- What calendars were told of a visit, kept when its hour moves, goes to somebody else or falls away: a calendar forgets
-- only what it is told to forget (RFC 5545, STATUS and SEQUENCE).
create table calendar_entry (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  visit_id uuid not null,
  technician_id uuid not null,
  day date not null,
  starts time not null,
  ends time not null,
  cancelled boolean not null default false,
  sequence int not null check (sequence >= 0),
  changed_at timestamptz not null default now(),
  primary key (tenant_id, id),
  constraint one_entry_a_visit_and_technician unique (tenant_id, visit_id, technician_id),
  foreign key (tenant_id, visit_id) references visit (tenant_id, id),
  foreign key (tenant_id, technician_id) references membership (tenant_id, person_id)
);
call owned('calendar_entry');
-- What an appointment said before is kept with the appointment.
drop trigger keep_what_it_said on calendar_entry;
create index calendar_entry_of_technician on calendar_entry (tenant_id, technician_id, day);

create function tell_the_calendars() returns trigger language plpgsql as $$
declare
  visit uuid := case when tg_op = 'DELETE' then old.visit_id else new.visit_id end;
  tenant uuid := case when tg_op = 'DELETE' then old.tenant_id else new.tenant_id end;
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
     where tenant_id = tenant and visit_id = visit and technician_id = old.technician_id;
  end if;
  if tg_op <> 'DELETE' then
    insert into calendar_entry (tenant_id, visit_id, technician_id, day, starts, ends, sequence)
      values (tenant, visit, new.technician_id, new.day, new.starts, new.ends, next_sequence)
      on conflict on constraint one_entry_a_visit_and_technician do update
        set day = excluded.day, starts = excluded.starts, ends = excluded.ends, cancelled = false,
            sequence = excluded.sequence, changed_at = now();
  end if;
  return null;
end $$;

create trigger tell_the_calendars after insert or update or delete on appointment
  for each row execute function tell_the_calendars();

insert into calendar_entry (tenant_id, visit_id, technician_id, day, starts, ends, sequence)
  select tenant_id, visit_id, technician_id, day, starts, ends, 0 from appointment;
