-- Stock is movements only, and a visit's close-out is a list of operations with the rows that follow from it.
-- The references to visit and visit_task are added by the next migration of this module.

create table stock_place (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  kind text not null check (kind in ('shelf', 'van')),
  name text not null check (name <> ''),
  person_id uuid,
  closed_on date,
  version int not null default 0,
  primary key (tenant_id, id),
  constraint stock_place_name_taken unique (tenant_id, name),
  constraint one_van_a_person unique (tenant_id, person_id),
  foreign key (tenant_id, person_id) references membership (tenant_id, person_id),
  constraint only_a_van_has_a_person check (kind = 'van' or person_id is null)
);
call owned('stock_place');

create table stock_movement (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  part_code text not null check (part_code <> ''),
  place_id uuid not null,
  quantity numeric(14, 4) not null check (quantity <> 0),
  kind text not null check (kind in ('receipt', 'move', 'use', 'count', 'return')),
  why text,
  visit_id uuid,
  operation_id uuid,
  day date not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, place_id) references stock_place (tenant_id, id),
  constraint a_movement_moves_once unique (tenant_id, operation_id, part_code, place_id),
  constraint a_use_has_a_visit check (kind <> 'use' or visit_id is not null)
);
call owned('stock_movement');
create index stock_movement_at_a_place on stock_movement (tenant_id, place_id, part_code);
create index stock_movement_of_a_visit on stock_movement (tenant_id, visit_id) where visit_id is not null;

-- What devices said, in the order in which this side took it.
create table operation (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null,
  visit_id uuid not null,
  device text not null check (device <> ''),
  sequence bigint not null check (sequence >= 0),
  at timestamptz not null,
  based_on uuid,
  kind text not null check (kind <> ''),
  body jsonb not null,
  state text not null check (state in ('taken', 'refused', 'waiting')),
  place int,
  answer jsonb not null default '{}',
  amendment_id uuid,
  person_id uuid not null,
  received_at timestamptz not null,
  primary key (tenant_id, id),
  constraint operation_has_its_place unique (tenant_id, visit_id, place),
  constraint only_what_was_taken_has_a_place check ((state = 'taken') = (place is not null))
);
call owned('operation');

create table closure (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  visit_id uuid not null,
  home_id uuid not null,
  technician_id uuid not null,
  day date not null,
  arrived_at timestamptz,
  left_at timestamptz,
  minutes int not null check (minutes between 0 and 1440),
  minutes_planned int not null check (minutes_planned >= 0),
  extra_minutes int not null check (extra_minutes between 0 and 1440),
  extra_why text,
  received_by text,
  nobody_why text,
  household_note text,
  closed_at timestamptz not null,
  version int not null default 1 check (version >= 1),
  primary key (tenant_id, id),
  constraint a_visit_closes_once unique (tenant_id, visit_id),
  constraint somebody_or_a_reason check ((received_by is null) <> (nobody_why is null))
);
call owned('closure');
create index closure_of_a_home on closure (tenant_id, home_id, day);

create table task_outcome (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null,
  visit_id uuid not null,
  visit_task_id uuid not null,
  outcome text not null check (outcome in ('done', 'not_applicable', 'deferred')),
  reason text,
  primary key (tenant_id, id),
  constraint one_outcome_a_task unique (tenant_id, visit_task_id),
  constraint deferred_for_a_reason check (outcome <> 'deferred' or reason is not null)
);
call owned('task_outcome');
create index task_outcome_of_a_visit on task_outcome (tenant_id, visit_id);

-- Numbers in SI; what was typed is kept beside them. Yes or no, words and days are kept as typed only.
create table reading (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null,
  visit_id uuid not null,
  visit_task_id uuid not null,
  home_id uuid not null,
  equipment_id uuid,
  code text not null check (code <> ''),
  value numeric(20, 6),
  unit text,
  entered_value text not null,
  entered_unit text,
  running_state text,
  volts numeric(10, 3),
  low numeric(20, 6),
  high numeric(20, 6),
  standing text not null check (standing in ('within', 'low', 'high', 'past_limit', 'no_band')),
  action_en text,
  action_fr text,
  day date not null,
  primary key (tenant_id, id),
  constraint a_number_has_its_unit check ((value is null) = (unit is null))
);
call owned('reading');
create index reading_of_a_visit on reading (tenant_id, visit_id);
create index reading_of_a_unit on reading (tenant_id, equipment_id, code, day desc);

create table finding (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null,
  visit_id uuid not null,
  home_id uuid not null,
  equipment_id uuid,
  visit_task_id uuid,
  level text not null check (level in ('information', 'recommended', 'urgent', 'do_not_use')),
  sentence_code text,
  text text,
  language text check (language in ('en', 'fr')),
  told_to text,
  answer text check (answer in ('yes', 'no')),
  next_step text check (next_step in ('visit', 'estimate')),
  ticket text check (ticket in ('refrigerant', 'gas', 'electrical')),
  day date not null,
  cleared_on date,
  cleared_by uuid,
  cleared_why text,
  primary key (tenant_id, id),
  constraint a_sentence_or_words check ((sentence_code is null) <> (text is null)),
  constraint words_have_a_language check (text is null or language is not null),
  constraint do_not_use_is_answered check (level <> 'do_not_use' or (told_to is not null and answer is not null)),
  constraint cleared_by_somebody check ((cleared_on is null) = (cleared_by is null))
);
call owned('finding');
create index finding_of_a_visit on finding (tenant_id, visit_id);
create index finding_open_in_a_home on finding (tenant_id, home_id) where cleared_on is null;

create table photo (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null,
  visit_id uuid not null,
  sha256 text not null constraint photo_sha256_shape check (sha256 ~ '^[0-9a-f]{64}$'),
  finding_id uuid,
  visit_task_id uuid,
  caption text,
  primary key (tenant_id, id)
);
call owned('photo');
create index photo_of_a_visit on photo (tenant_id, visit_id);

-- Bytes, once each by what they are; no entity maps them.
create table photo_bytes (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  -- Of what the device sent, which is how it knows the photo; kept is what we made of it.
  sha256 text not null check (sha256 ~ '^[0-9a-f]{64}$'),
  kept_sha256 text not null,
  media_type text not null,
  width int not null,
  height int not null,
  bytes bytea not null check (length(bytes) <= 4194304),
  primary key (tenant_id, id),
  constraint photo_bytes_once unique (tenant_id, sha256)
);
call owned('photo_bytes');

create table part_used (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null,
  visit_id uuid not null,
  part_code text not null check (part_code <> ''),
  quantity numeric(14, 4) not null check (quantity > 0),
  place_id uuid not null,
  equipment_id uuid,
  why text,
  short_why text,
  primary key (tenant_id, id),
  foreign key (tenant_id, place_id) references stock_place (tenant_id, id)
);
call owned('part_used');
create index part_used_in_a_visit on part_used (tenant_id, visit_id);

create table follow_up (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  visit_id uuid not null,
  home_id uuid not null,
  kind text not null check (kind in ('visit', 'estimate', 'refused')),
  finding_id uuid,
  visit_task_id uuid,
  opened_on date not null,
  ended_on date,
  ended_why text,
  became_id uuid,
  version int not null default 0,
  primary key (tenant_id, id),
  constraint follow_up_once unique nulls not distinct (tenant_id, visit_id, finding_id, visit_task_id, kind)
);
call owned('follow_up');
create index follow_up_open on follow_up (tenant_id, home_id) where ended_on is null;

create table amendment (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null,
  visit_id uuid not null,
  version int not null check (version >= 2),
  why text not null check (why <> ''),
  person_id uuid not null,
  at timestamptz not null,
  changes jsonb not null,
  primary key (tenant_id, id),
  constraint a_version_is_made_once unique (tenant_id, visit_id, version)
);
call owned('amendment');

-- When a task was last done on a unit, which the next season counts from. Without a visit: told when the shop was taken over.
create table unit_history (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  home_id uuid not null,
  equipment_id uuid,
  task_code text not null check (task_code <> ''),
  day date not null,
  technician_id uuid,
  visit_id uuid,
  visit_task_id uuid,
  primary key (tenant_id, id),
  constraint done_once_in_a_visit unique (tenant_id, visit_task_id)
);
call owned('unit_history');
create index unit_history_of_a_unit on unit_history (tenant_id, equipment_id, task_code, day desc);
create index unit_history_of_a_home on unit_history (tenant_id, home_id, day desc);
