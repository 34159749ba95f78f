-- What readings are taken with: each instrument with its serial number, until when it is calibrated, and who has it. A reading
-- keeps what its instrument was called, and until when it was calibrated then.
create table instrument (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  name text not null check (name <> ''),
  serial text not null check (serial <> ''),
  primary key (tenant_id, id),
  constraint an_instrument_is_known_once unique (tenant_id, name, serial)
);
call owned('instrument');

create table instrument_calibration (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  instrument_id uuid not null,
  day date not null,
  until_day date not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, instrument_id) references instrument (tenant_id, id),
  constraint a_calibration_holds_for_a_day check (until_day >= day)
);
call owned('instrument_calibration');
create index calibration_of_an_instrument on instrument_calibration (tenant_id, instrument_id, day);

create table instrument_holder (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  instrument_id uuid not null,
  person_id uuid,
  day date not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, instrument_id) references instrument (tenant_id, id),
  foreign key (tenant_id, person_id) references membership (tenant_id, person_id)
);
call owned('instrument_holder');
create index holder_of_an_instrument on instrument_holder (tenant_id, instrument_id);

create table instrument_end (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  instrument_id uuid not null,
  day date not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, instrument_id) references instrument (tenant_id, id),
  constraint an_instrument_ends_once unique (tenant_id, instrument_id)
);
call owned('instrument_end');
revoke update, delete on instrument, instrument_calibration, instrument_holder, instrument_end from ${app};

alter table reading
  add column instrument_id uuid,
  add column instrument text,
  add column instrument_until date,
  add foreign key (tenant_id, instrument_id) references instrument (tenant_id, id);
