-- A machine that must not be used: stopped by anybody, back in service only by somebody with the ticket for it.
create table machine_stop (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  home_id uuid not null,
  equipment_id uuid,
  -- Where it was seen; the visit and the finding may be corrected later, the stop stays.
  visit_id uuid,
  finding_id uuid,
  person_id uuid not null,
  at timestamptz not null,
  day date not null,
  sentence_code text,
  seen text,
  language text check (language in ('en', 'fr')),
  shut_off text check (shut_off <> ''),
  ticket text not null check (ticket in ('refrigerant', 'gas', 'electrical')),
  place text not null check (place <> ''),
  primary key (tenant_id, id),
  foreign key (tenant_id, home_id) references home (tenant_id, id),
  foreign key (tenant_id, equipment_id) references equipment (tenant_id, id),
  constraint a_finding_stops_once unique (tenant_id, finding_id),
  constraint a_stop_says_what_was_seen check (sentence_code is not null or (seen <> '' and language is not null))
);

-- What was found before and is still not to be used is stopped from its day on.
insert into machine_stop (tenant_id, home_id, equipment_id, visit_id, finding_id, person_id, at, day, sentence_code, seen, language,
    ticket, place)
  select f.tenant_id, f.home_id, q.id, f.visit_id, f.id,
         coalesce(o.person_id, f.made_by, '00000000-0000-0000-0000-000000000000'), coalesce(o.at, f.made_at), f.day, f.sentence_code,
         f.text, f.language,
         coalesce(f.ticket, case
           when f.sentence_code in ('co-high', 'co-in-air', 'heat-exchanger-cracked', 'vent-blocked', 'gas-smell-found') then 'gas'
           when f.sentence_code is not null then 'electrical'
           when q.kind in ('gas-furnace', 'rooftop-unit', 'co-alarm') then 'gas'
           else 'electrical' end),
         upper(h.country) || '-' || upper(h.region)
    from finding f
    join home h on h.tenant_id = f.tenant_id and h.id = f.home_id
    left join equipment q on q.tenant_id = f.tenant_id and q.id = f.equipment_id
    left join operation o on o.tenant_id = f.tenant_id and o.id = f.id
   where f.level = 'do_not_use' and f.cleared_on is null;

call owned('machine_stop');
create index machine_stop_of_a_home on machine_stop (tenant_id, home_id);
create index machine_stop_of_a_machine on machine_stop (tenant_id, equipment_id);
create index machine_stop_by_day on machine_stop (tenant_id, day);
revoke update, delete on machine_stop from ${app};

-- How it ended: back in service, or taken out of the home, by whom with which ticket.
create table back_in_service (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  stop_id uuid not null,
  how text not null check (how in ('in_service', 'taken_out')),
  person_id uuid not null,
  ticket_kind text not null check (ticket_kind in ('refrigerant', 'gas', 'electrical')),
  ticket_number text,
  ticket_until date,
  day date not null,
  at timestamptz not null,
  done text not null check (done <> ''),
  primary key (tenant_id, id),
  foreign key (tenant_id, stop_id) references machine_stop (tenant_id, id),
  foreign key (tenant_id, person_id) references membership (tenant_id, person_id),
  constraint a_stop_ends_once unique (tenant_id, stop_id),
  constraint the_ticket_held_on_the_day check (ticket_until is null or ticket_until >= day)
);
call owned('back_in_service');
revoke update, delete on back_in_service from ${app};

-- Whoever writes it: only the ticket that the stop asks for, held by that person on that day.
create function a_stop_ends_with_its_ticket() returns trigger language plpgsql as $$
begin
  if not exists (
    select from machine_stop s
      join ticket t on t.tenant_id = s.tenant_id and t.kind = s.ticket and t.person_id = new.person_id
     where s.tenant_id = new.tenant_id and s.id = new.stop_id and s.ticket = new.ticket_kind
       and (t.expires_on is null or t.expires_on >= new.day)) then
    raise exception 'no ticket for it' using errcode = '23514', constraint = 'a_stop_ends_with_its_ticket';
  end if;
  return new;
end $$;
create trigger a_stop_ends_with_its_ticket before insert on back_in_service
  for each row execute function a_stop_ends_with_its_ticket();

-- Whether it is the only heat and it freezes; then what heats the home tonight, and who was called when.
create table stop_heat (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  stop_id uuid not null,
  person_id uuid not null,
  at timestamptz not null,
  only_heat boolean not null,
  freezing boolean not null,
  tonight text check (tonight <> ''),
  office_who text check (office_who <> ''),
  office_at timestamptz,
  customer_who text check (customer_who <> ''),
  customer_at timestamptz,
  primary key (tenant_id, id),
  foreign key (tenant_id, stop_id) references machine_stop (tenant_id, id),
  constraint called_has_its_hour check ((office_who is null) = (office_at is null) and (customer_who is null) = (customer_at is null)),
  constraint only_heat_in_frost_is_seen_to check (
    not (only_heat and freezing) or (tonight is not null and office_who is not null and customer_who is not null))
);
call owned('stop_heat');
create index stop_heat_of_a_stop on stop_heat (tenant_id, stop_id);
revoke update, delete on stop_heat from ${app};

-- A duty of a stop that was done, by its code in the table of duties.
create table stop_duty_done (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  stop_id uuid not null,
  code text not null check (code <> ''),
  who text not null check (who <> ''),
  day date not null,
  at timestamptz not null,
  words text check (words <> ''),
  primary key (tenant_id, id),
  foreign key (tenant_id, stop_id) references machine_stop (tenant_id, id),
  constraint a_duty_is_done_once unique (tenant_id, stop_id, code)
);
call owned('stop_duty_done');
revoke update, delete on stop_duty_done from ${app};
