-- The businesses, the people in them, and the two procedures that lock a table to its business.

create extension if not exists btree_gist;
create extension if not exists unaccent;
create extension if not exists pg_trgm;

create function current_tenant() returns uuid language sql stable as
  $$ select nullif(current_setting('app.tenant', true), '')::uuid $$;

create function current_person() returns uuid language sql stable as
  $$ select nullif(current_setting('app.person', true), '')::uuid $$;

-- Unowned: the businesses themselves; row security shows each its own row only.
create table business (
  id uuid primary key default uuidv7(),
  slug text not null constraint business_slug_taken unique
    constraint business_slug_shape check (slug ~ '^[a-z0-9][a-z0-9-]{1,38}[a-z0-9]$'),
  name text not null check (name <> ''),
  language text not null check (language in ('en', 'fr')),
  zone text not null,
  country char(2) not null,
  region text not null,
  currency char(3) not null,
  opened_on date not null,
  made_at timestamptz not null default now()
);
alter table business enable row level security;
alter table business force row level security;
create policy own_business on business for all to ${app}
  using (id = current_tenant()) with check (id = current_tenant());
create policy every_door on business for select to ${lookup} using (true);
grant select, insert, update on business to ${app};
grant select on business to ${lookup};

create table audit (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  table_name text not null,
  row_id uuid not null,
  act text not null check (act in ('update', 'delete')),
  person_id uuid,
  at timestamptz not null default clock_timestamp(),
  before jsonb not null,
  after jsonb,
  primary key (tenant_id, id)
);
create index audit_of_a_row on audit (tenant_id, row_id, at);
alter table audit enable row level security;
alter table audit force row level security;
create policy own_rows on audit using (tenant_id = current_tenant()) with check (tenant_id = current_tenant());
grant select, insert on audit to ${app};

-- Keeps what a row said before, column by column, only where it changed.
create function keep_what_it_said() returns trigger language plpgsql as $$
declare
  was jsonb := to_jsonb(old);
  is_now jsonb := case when tg_op = 'UPDATE' then to_jsonb(new) end;
begin
  if tg_op = 'UPDATE' then
    select coalesce(jsonb_object_agg(key, value), '{}') into was
      from jsonb_each(to_jsonb(old)) where value is distinct from is_now -> key;
    select coalesce(jsonb_object_agg(key, value), '{}') into is_now
      from jsonb_each(to_jsonb(new)) where value is distinct from to_jsonb(old) -> key;
    if was = '{}'::jsonb then
      return null;
    end if;
  end if;
  insert into audit (tenant_id, table_name, row_id, act, person_id, before, after)
    values (old.tenant_id, tg_table_name, old.id, lower(tg_op), current_person(), was, is_now);
  return null;
end $$;

-- Locks a table to its business: forced row security, who made the row, what it said before, the application's grants.
create procedure owned(name regclass) language plpgsql as $$
begin
  execute format('alter table %s add column made_by uuid default current_person(), '
    'add column made_at timestamptz not null default now(), add column batch uuid', name);
  execute format('alter table %s enable row level security', name);
  execute format('alter table %s force row level security', name);
  execute format('create policy own_rows on %s using (tenant_id = current_tenant()) '
    'with check (tenant_id = current_tenant())', name);
  execute format('create trigger keep_what_it_said after update or delete on %s '
    'for each row execute function keep_what_it_said()', name);
  execute format('grant select, insert, update, delete on %s to ${app}', name);
end $$;

-- The business's own facts: what stands on its paper.
create table business_profile (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  tagline text,
  street text not null,
  city text not null,
  region text not null,
  postal text not null,
  country char(2) not null,
  phone text,
  email text,
  licence text,
  gst_number text,
  qst_number text,
  small_supplier boolean not null default false,
  carry_open_season boolean not null default true,
  invoice_terms_days int not null default 30 check (invoice_terms_days between 0 and 365),
  theme text not null default 'system' check (theme in ('system', 'day', 'night')),
  logo bytea,
  settings jsonb not null default '{}',
  version int not null default 0,
  primary key (tenant_id, id),
  constraint one_profile unique (tenant_id),
  constraint small_suppliers_have_no_number check (not small_supplier or (gst_number is null and qst_number is null))
);
call owned('business_profile');

-- A person is the sign-in's subject; what the business knows of them stands here.
create table membership (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  person_id uuid not null,
  name text not null check (name <> ''),
  email text not null,
  phone text,
  language text not null check (language in ('en', 'fr')),
  role text not null check (role in ('owner', 'office', 'technician')),
  until_day date,
  version int not null default 0,
  primary key (tenant_id, id),
  constraint one_membership_a_person unique (tenant_id, person_id)
);
call owned('membership');
create policy every_door on membership for select to ${lookup} using (true);
grant select on membership to ${lookup};
create index membership_of_a_person on membership (person_id);

create table ticket (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  person_id uuid not null,
  kind text not null check (kind in ('refrigerant', 'gas', 'electrical')),
  number text,
  expires_on date,
  primary key (tenant_id, id),
  foreign key (tenant_id, person_id) references membership (tenant_id, person_id),
  constraint one_ticket_a_kind unique (tenant_id, person_id, kind)
);
call owned('ticket');

-- Which days have been let pass for a business: once each, in order.
create table day_passed (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  day date not null,
  primary key (tenant_id, id),
  constraint a_day_passes_once unique (tenant_id, day)
);
call owned('day_passed');
