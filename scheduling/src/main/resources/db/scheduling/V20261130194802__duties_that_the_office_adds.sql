-- What else has to be done about a stop, as the office knows it: its own words, its own day, and what it rests on.
create table stop_duty (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  stop_id uuid not null,
  person_id uuid not null,
  at timestamptz not null,
  words text not null check (words <> ''),
  office boolean not null,
  due date not null,
  source text not null check (source <> ''),
  primary key (tenant_id, id),
  foreign key (tenant_id, stop_id) references machine_stop (tenant_id, id)
);
call owned('stop_duty');
create index stop_duty_of_a_stop on stop_duty (tenant_id, stop_id);
revoke update, delete on stop_duty from ${app};

-- Another ticket is the one that may put it back: who says so, when, and why. The last one counts.
create table stop_ticket (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  stop_id uuid not null,
  ticket text not null check (ticket in ('refrigerant', 'gas', 'electrical')),
  why text not null check (why <> ''),
  person_id uuid not null,
  at timestamptz not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, stop_id) references machine_stop (tenant_id, id)
);
call owned('stop_ticket');
create index stop_ticket_of_a_stop on stop_ticket (tenant_id, stop_id);
revoke update, delete on stop_ticket from ${app};

-- The ticket that the stop asks for now, as it was corrected last.
create or replace function a_stop_ends_with_its_ticket() returns trigger language plpgsql as $$
begin
  if not exists (
    select from machine_stop s
      left join lateral (
        select c.ticket from stop_ticket c where c.tenant_id = s.tenant_id and c.stop_id = s.id
         order by c.at desc, c.id desc limit 1) c on true
      join ticket t on t.tenant_id = s.tenant_id and t.kind = coalesce(c.ticket, s.ticket) and t.person_id = new.person_id
     where s.tenant_id = new.tenant_id and s.id = new.stop_id and coalesce(c.ticket, s.ticket) = new.ticket_kind
       and (t.expires_on is null or t.expires_on >= new.day)) then
    raise exception 'no ticket for it' using errcode = '23514', constraint = 'a_stop_ends_with_its_ticket';
  end if;
  return new;
end $$;
