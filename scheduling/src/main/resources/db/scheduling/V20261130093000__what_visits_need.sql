-- What a visit needs beyond its tickets: two people, a time of day. By its task, as the business wrote it for all homes, and by
-- hand for one visit.
create table task_need (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  task_code text not null check (task_code <> ''),
  people int not null constraint task_need_people check (people between 1 and 2),
  earliest time,
  latest time,
  why text not null check (why <> ''),
  version int not null default 0,
  primary key (tenant_id, id),
  constraint task_need_hours check (earliest <= latest),
  constraint one_need_a_task unique (tenant_id, task_code)
);
call owned('task_need');

create table visit_need (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  visit_id uuid not null,
  people int not null constraint visit_need_people check (people between 1 and 2),
  ticket text check (ticket in ('refrigerant', 'gas', 'electrical')),
  earliest time,
  latest time,
  why text not null check (why <> ''),
  version int not null default 0,
  primary key (tenant_id, id),
  foreign key (tenant_id, visit_id) references visit (tenant_id, id),
  constraint visit_need_hours check (earliest <= latest),
  constraint one_need_a_visit unique (tenant_id, visit_id)
);
call owned('visit_need');

-- Who goes with the first technician, at the same hours; nobody is in two places, whether they lead or go along.
create table appointment_second (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  visit_id uuid not null,
  technician_id uuid not null,
  day date not null,
  starts time not null,
  ends time not null,
  during tsrange not null generated always as (tsrange(day + starts, day + ends, '[)')) stored,
  primary key (tenant_id, id),
  foreign key (tenant_id, visit_id) references appointment (tenant_id, visit_id) on delete cascade,
  foreign key (tenant_id, technician_id) references membership (tenant_id, person_id),
  constraint visit_has_a_second_already unique (tenant_id, visit_id),
  constraint second_is_elsewhere exclude using gist (tenant_id with =, technician_id with =, during with &&) deferrable
);
call owned('appointment_second');
create index appointment_second_of_a_day on appointment_second (tenant_id, day, technician_id);

-- Whoever writes hours of the crew stands in line, so that two who write at once see each other.
create function crew_in_line() returns trigger language plpgsql as $$
begin
  perform pg_advisory_xact_lock(hashtextextended('crew ' || current_tenant(), 7));
  return null;
end $$;
create trigger crew_in_line before insert or update on appointment
  for each statement execute function crew_in_line();
create trigger crew_in_line before insert or update on appointment_second
  for each statement execute function crew_in_line();

create function nobody_is_in_two_places() returns trigger language plpgsql as $$
begin
  if exists (
    select 1 from written w
      join appointment a on a.tenant_id = w.tenant_id and a.technician_id = w.technician_id
      join appointment_second s on s.tenant_id = a.tenant_id and s.technician_id = a.technician_id and s.during && a.during
     where s.id = w.id or a.id = w.id) then
    raise exception 'somebody would be in two places' using errcode = '23514', constraint = 'second_is_elsewhere';
  end if;
  return null;
end $$;
create trigger nobody_is_in_two_places after insert on appointment
  referencing new table as written for each statement execute function nobody_is_in_two_places();
create trigger nobody_is_in_two_places after insert on appointment_second
  referencing new table as written for each statement execute function nobody_is_in_two_places();
create trigger nobody_is_in_two_places_later after update on appointment_second
  referencing new table as written for each statement execute function nobody_is_in_two_places();

-- Who goes along comes along when the day is moved.
create function second_comes_along() returns trigger language plpgsql as $$
begin
  update appointment_second s set day = w.day, starts = w.starts, ends = w.ends
    from written w where s.tenant_id = w.tenant_id and s.visit_id = w.visit_id;
  if exists (
    select 1 from written w
      join appointment_second s on s.tenant_id = w.tenant_id and s.technician_id = w.technician_id and s.during && w.during) then
    raise exception 'somebody would be in two places' using errcode = '23514', constraint = 'second_is_elsewhere';
  end if;
  return null;
end $$;
create trigger second_comes_along after update on appointment
  referencing new table as written for each statement execute function second_comes_along();

alter table audit alter column of_id set expression as (
  cast(case when act = 'delete' then
    case table_name
      when 'home_part' then before ->> 'home_id'
      when 'hazard' then before ->> 'home_id'
      when 'access_code' then before ->> 'home_id'
      when 'household_task' then before ->> 'home_id'
      when 'own_interval' then before ->> 'equipment_id'
      when 'plan_task' then before ->> 'plan_id'
      when 'plan_part' then before ->> 'plan_id'
      when 'plan_extra' then before ->> 'plan_id'
      when 'agreement_promise' then before ->> 'agreement_id'
      when 'agreement_part' then before ->> 'agreement_id'
      when 'appointment' then before ->> 'visit_id'
      when 'appointment_second' then before ->> 'visit_id'
      when 'finding' then before ->> 'visit_id'
      when 'follow_up' then before ->> 'visit_id'
      when 'visit_task' then before ->> 'visit_id'
      when 'task_outcome' then before ->> 'visit_id'
      when 'part_used' then before ->> 'visit_id'
      when 'photo' then before ->> 'visit_id'
      when 'invoice_line' then before ->> 'invoice_id'
      when 'payment_allocation' then before ->> 'payment_id'
      when 'ticket' then before ->> 'person_id'
      when 'roster_hours' then before ->> 'person_id'
      when 'day_off' then before ->> 'person_id'
    end
  end as uuid));
