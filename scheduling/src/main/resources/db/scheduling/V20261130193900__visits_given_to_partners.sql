-- Licensed partners with their papers, and the visits that were given to them: until a day, at a price, taken back or done.
create table partner (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  name text not null check (name <> ''),
  trade text not null check (trade in ('electrical', 'gas', 'plumbing', 'refrigeration', 'other')),
  phone text,
  email text,
  primary key (tenant_id, id),
  constraint a_partner_is_known_once unique (tenant_id, name, trade)
);
call owned('partner');

create table partner_end (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  partner_id uuid not null,
  day date not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, partner_id) references partner (tenant_id, id),
  constraint a_partner_ends_once unique (tenant_id, partner_id)
);
call owned('partner_end');

create table partner_paper (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  partner_id uuid not null,
  kind text not null check (kind in ('licence', 'insurance', 'other')),
  number text,
  expires_on date not null,
  remind_days int not null check (remind_days between 1 and 365),
  primary key (tenant_id, id),
  foreign key (tenant_id, partner_id) references partner (tenant_id, id)
);
call owned('partner_paper');
create index paper_of_a_partner on partner_paper (tenant_id, partner_id);

create table partner_paper_end (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  paper_id uuid not null,
  day date not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, paper_id) references partner_paper (tenant_id, id),
  constraint a_partners_paper_ends_once unique (tenant_id, paper_id)
);
call owned('partner_paper_end');

-- The price is what the partner asks of us, before taxes.
create table partner_visit (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  visit_id uuid not null,
  partner_id uuid not null,
  day date not null,
  price_minor bigint not null check (price_minor >= 0),
  currency text not null,
  note text,
  primary key (tenant_id, id),
  foreign key (tenant_id, visit_id) references visit (tenant_id, id),
  foreign key (tenant_id, partner_id) references partner (tenant_id, id)
);
call owned('partner_visit');
create index partner_of_a_visit on partner_visit (tenant_id, visit_id);

create table partner_visit_end (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  given_id uuid not null,
  day date not null,
  why text not null check (why <> ''),
  primary key (tenant_id, id),
  foreign key (tenant_id, given_id) references partner_visit (tenant_id, id),
  constraint a_visit_is_taken_back_once unique (tenant_id, given_id)
);
call owned('partner_visit_end');

create table partner_visit_done (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  visit_id uuid not null,
  partner_id uuid not null,
  given_id uuid not null,
  day date not null,
  price_minor bigint not null check (price_minor >= 0),
  currency text not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, visit_id) references visit (tenant_id, id),
  foreign key (tenant_id, partner_id) references partner (tenant_id, id),
  foreign key (tenant_id, given_id) references partner_visit (tenant_id, id),
  constraint a_partner_does_a_visit_once unique (tenant_id, visit_id)
);
call owned('partner_visit_done');

-- Bytes that no entity maps: the partner's own report, a PDF as it came or a picture as we drew it anew.
create table partner_report (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  visit_id uuid not null,
  partner_id uuid not null,
  media_type text not null check (media_type in ('application/pdf', 'image/jpeg')),
  bytes bytea not null check (length(bytes) <= 5000000),
  primary key (tenant_id, id),
  foreign key (tenant_id, visit_id) references visit (tenant_id, id),
  foreign key (tenant_id, partner_id) references partner (tenant_id, id)
);
call owned('partner_report');
create index partner_report_of_a_visit on partner_report (tenant_id, visit_id);

revoke update, delete on partner, partner_end, partner_paper, partner_paper_end, partner_visit, partner_visit_end,
  partner_visit_done, partner_report from ${app};

-- A visit is in one hand: a technician's or a partner's. Whoever gives it to a partner holds the visit's row, which an
-- appointment's reference holds too, so that of two at once the second sees the first.
create function a_visit_is_in_one_hand() returns trigger language plpgsql as $$
begin
  if tg_table_name = 'partner_visit' then
    perform 1 from visit v where v.tenant_id = new.tenant_id and v.id = new.visit_id for update;
    if exists (select 1 from appointment a where a.tenant_id = new.tenant_id and a.visit_id = new.visit_id)
      or exists (select 1 from partner_visit w where w.tenant_id = new.tenant_id and w.visit_id = new.visit_id and w.id <> new.id
        and not exists (select 1 from partner_visit_end x where x.tenant_id = w.tenant_id and x.given_id = w.id)) then
      raise exception 'in other hands' using errcode = '23514', constraint = 'a_visit_is_in_one_hand';
    end if;
  elsif exists (select 1 from partner_visit w where w.tenant_id = new.tenant_id and w.visit_id = new.visit_id
      and not exists (select 1 from partner_visit_end x where x.tenant_id = w.tenant_id and x.given_id = w.id)) then
    raise exception 'in other hands' using errcode = '23514', constraint = 'a_visit_is_in_one_hand';
  end if;
  return new;
end $$;
create trigger a_visit_is_in_one_hand after insert on partner_visit
  for each row execute function a_visit_is_in_one_hand();
create trigger a_visit_is_in_one_hand after insert on appointment
  for each row execute function a_visit_is_in_one_hand();
