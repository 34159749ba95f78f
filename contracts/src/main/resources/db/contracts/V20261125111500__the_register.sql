-- The register: who the customers are, which homes, which machines, and what a business adds to the shipped catalogue.

-- The business's seasons, by its climate; a new business gets the default rows and edits them.
create table season (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  code text not null check (code ~ '^[a-z0-9-]{1,40}$'),
  name_en text not null check (name_en <> ''),
  name_fr text not null check (name_fr <> ''),
  from_month int not null check (from_month between 1 and 12),
  from_day int not null check (from_day between 1 and 31),
  until_month int not null check (until_month between 1 and 12),
  until_day int not null check (until_day between 1 and 31),
  changeover text check (changeover in ('heating', 'cooling')),
  position int not null default 0,
  version int not null default 0,
  primary key (tenant_id, id),
  constraint one_season_a_code unique (tenant_id, code)
);
call owned('season');

create table customer (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  key text not null check (key <> ''),
  name text not null check (name <> ''),
  language text not null check (language in ('en', 'fr')),
  phone text,
  email text,
  street text,
  city text,
  region text,
  postal text,
  country char(2),
  invoices text not null default 'one' check (invoices in ('one', 'each')),
  purchase_order text,
  notes text,
  version int not null default 0,
  primary key (tenant_id, id),
  constraint one_customer_a_key unique (tenant_id, key)
);
call owned('customer');

create table building (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  name text not null check (name <> ''),
  street text not null,
  city text not null,
  region text not null,
  postal text,
  country char(2) not null,
  notes text,
  version int not null default 0,
  primary key (tenant_id, id),
  constraint one_building_a_name unique (tenant_id, name)
);
call owned('building');

create table home (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  key text not null check (key <> ''),
  building_id uuid,
  unit_label text,
  street text not null check (street <> ''),
  city text not null,
  region text not null,
  postal text,
  country char(2) not null,
  latitude numeric check (latitude between -90 and 90),
  longitude numeric check (longitude between -180 and 180),
  property_use text not null default 'residential' check (property_use in ('residential', 'commercial')),
  built_in int check (built_in between 1600 and 2200),
  getting_in text,
  to_be_read boolean not null default false,
  version int not null default 0,
  primary key (tenant_id, id),
  foreign key (tenant_id, building_id) references building (tenant_id, id),
  constraint one_home_a_key unique (tenant_id, key)
);
call owned('home');
create index home_of_a_building on home (tenant_id, building_id) where building_id is not null;

-- Who signs, pays, lives there, lets us in, gets the report: each from a day (in) until a day (out).
create table home_part (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  home_id uuid not null,
  customer_id uuid not null,
  part text not null check (part in ('signs', 'pays', 'lives', 'lets_in', 'gets_report')),
  from_day date not null,
  until_day date,
  purchase_order text,
  primary key (tenant_id, id),
  foreign key (tenant_id, home_id) references home (tenant_id, id),
  foreign key (tenant_id, customer_id) references customer (tenant_id, id),
  constraint a_part_ends_after_it_begins check (until_day is null or until_day > from_day),
  constraint one_signs_and_one_pays_at_a_time exclude using gist
    (tenant_id with =, home_id with =, part with =, daterange(from_day, until_day) with &&)
    where (part in ('signs', 'pays'))
);
call owned('home_part');
create index part_of_a_home on home_part (tenant_id, home_id);
create index part_of_a_customer on home_part (tenant_id, customer_id);

create table equipment (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  home_id uuid,
  building_id uuid,
  owner_customer_id uuid,
  kind text not null check (kind <> ''),
  name text not null check (name <> ''),
  make text,
  model text,
  serial text,
  location text,
  installed_on date,
  installed_by text,
  maker_warranty_until date,
  labour_warranty_until date,
  registration text,
  fits jsonb not null default '{}',
  nameplate jsonb not null default '{}',
  ended_on date,
  follows_id uuid,
  position int not null default 0,
  version int not null default 0,
  primary key (tenant_id, id),
  foreign key (tenant_id, home_id) references home (tenant_id, id),
  foreign key (tenant_id, building_id) references building (tenant_id, id),
  foreign key (tenant_id, owner_customer_id) references customer (tenant_id, id),
  foreign key (tenant_id, follows_id) references equipment (tenant_id, id),
  constraint a_unit_stands_in_one_place check (num_nonnulls(home_id, building_id) = 1)
);
call owned('equipment');
create unique index one_unit_a_name on equipment (tenant_id, coalesce(home_id, building_id), name)
  where ended_on is null;
create index equipment_of_a_home on equipment (tenant_id, home_id);

-- Keys and codes; the secret is encrypted before it comes here.
create table access_code (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  home_id uuid not null,
  kind text not null check (kind in ('key', 'code', 'alarm')),
  label text not null default '',
  secret bytea not null,
  position int not null default 0,
  primary key (tenant_id, id),
  foreign key (tenant_id, home_id) references home (tenant_id, id),
  constraint one_code_a_label unique (tenant_id, home_id, kind, label)
);
call owned('access_code');

-- Who read the codes of a home, when (made_at, made_by) and why; nobody takes that back.
create table access_reading (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  home_id uuid not null,
  reason text not null check (reason <> ''),
  codes int not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, home_id) references home (tenant_id, id)
);
call owned('access_reading');
revoke update, delete on access_reading from ${app};
create index reading_of_a_home on access_reading (tenant_id, home_id, made_at);

create table hazard (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  home_id uuid not null,
  kind text not null check (kind in ('dog', 'ladder', 'asbestos', 'other')),
  note text not null default '',
  language text not null check (language in ('en', 'fr')),
  seen_on date not null,
  cleared_on date,
  primary key (tenant_id, id),
  foreign key (tenant_id, home_id) references home (tenant_id, id),
  constraint a_hazard_clears_after_it_is_seen check (cleared_on is null or cleared_on >= seen_on)
);
call owned('hazard');
create index hazard_of_a_home on hazard (tenant_id, home_id);

-- What a business adds to the shipped catalogue, in the shape of the shipped files.
create table own_kind (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  code text not null check (code <> ''),
  body jsonb not null,
  version int not null default 0,
  primary key (tenant_id, id),
  constraint one_own_kind_a_code unique (tenant_id, code)
);
call owned('own_kind');

create table own_task (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  code text not null check (code <> ''),
  body jsonb not null,
  version int not null default 0,
  primary key (tenant_id, id),
  constraint one_own_task_a_code unique (tenant_id, code)
);
call owned('own_task');

-- A machine's own label outranks the catalogue: another cadence, for the business or for one unit, with its basis.
create table own_interval (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  task_code text not null check (task_code <> ''),
  equipment_id uuid,
  cadence jsonb not null,
  basis text not null check (basis <> ''),
  source text,
  version int not null default 0,
  primary key (tenant_id, id),
  foreign key (tenant_id, equipment_id) references equipment (tenant_id, id),
  constraint one_interval_a_task_and_unit unique nulls not distinct (tenant_id, task_code, equipment_id)
);
call owned('own_interval');

create table part (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  code text not null check (code <> ''),
  name_en text not null check (name_en <> ''),
  name_fr text not null check (name_fr <> ''),
  unit text not null,
  fits_key text,
  size text,
  withdrawn_on date,
  version int not null default 0,
  primary key (tenant_id, id),
  constraint one_part_a_code unique (tenant_id, code)
);
call owned('part');

-- Search: one line of plain words a home (key, address, people, telephones as digits, serials), kept by the database.
create function search_words(said text) returns text language sql stable as
  $$ select regexp_replace(lower(unaccent(coalesce(said, ''))), '[^[:alnum:] ]', '', 'g') $$;

create table home_search (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null,
  words text not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, id) references home (tenant_id, id) on delete cascade
);
call owned('home_search');
drop trigger keep_what_it_said on home_search;

create function write_search_words(of_tenant uuid, homes uuid[]) returns void language sql as $$
  insert into home_search (tenant_id, id, words)
  select h.tenant_id, h.id, search_words(concat_ws(' ', h.key, h.unit_label, h.street, h.city, h.postal)) || ' '
      || coalesce((select string_agg(distinct search_words(c.name) || ' '
            || regexp_replace(coalesce(c.phone, ''), '[^0-9]', '', 'g') || ' ' || search_words(c.email), ' ')
          from home_part p join customer c on (c.tenant_id, c.id) = (p.tenant_id, p.customer_id)
         where (p.tenant_id, p.home_id) = (h.tenant_id, h.id)), '')
      || ' '
      || coalesce((select string_agg(regexp_replace(search_words(e.serial), ' ', '', 'g'), ' ') from equipment e
         where (e.tenant_id, e.home_id) = (h.tenant_id, h.id) and e.ended_on is null and e.serial is not null), '')
    from home h where h.tenant_id = of_tenant and h.id = any (homes)
  on conflict (tenant_id, id) do update set words = excluded.words where home_search.words <> excluded.words
$$;

create function keep_search_words() returns trigger language plpgsql as $$
declare
  of record;
begin
  if tg_table_name = 'customer' then
    for of in select p.tenant_id, array_agg(distinct p.home_id) as homes
      from home_part p join changed c on (c.tenant_id, c.id) = (p.tenant_id, p.customer_id) group by p.tenant_id
    loop
      perform write_search_words(of.tenant_id, of.homes);
    end loop;
  elsif tg_table_name = 'home' then
    for of in select tenant_id, array_agg(id) as homes from changed group by tenant_id loop
      perform write_search_words(of.tenant_id, of.homes);
    end loop;
  else
    for of in select tenant_id, array_agg(distinct home_id) as homes
      from changed where home_id is not null group by tenant_id
    loop
      perform write_search_words(of.tenant_id, of.homes);
    end loop;
  end if;
  return null;
end $$;

create trigger search_words_made after insert on home
  referencing new table as changed for each statement execute function keep_search_words();
create trigger search_words_changed after update on home
  referencing new table as changed for each statement execute function keep_search_words();
create trigger search_words_made after insert on home_part
  referencing new table as changed for each statement execute function keep_search_words();
create trigger search_words_changed after update on home_part
  referencing new table as changed for each statement execute function keep_search_words();
create trigger search_words_gone after delete on home_part
  referencing old table as changed for each statement execute function keep_search_words();
create trigger search_words_made after insert on equipment
  referencing new table as changed for each statement execute function keep_search_words();
create trigger search_words_changed after update on equipment
  referencing new table as changed for each statement execute function keep_search_words();
create trigger search_words_changed after update on customer
  referencing new table as changed for each statement execute function keep_search_words();
