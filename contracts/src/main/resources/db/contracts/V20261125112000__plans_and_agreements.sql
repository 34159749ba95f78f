-- What a business offers (plans) and what it has promised (agreements, with their own copied facts).

create table plan (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  code text not null constraint plan_code_shape check (code ~ '^[a-z0-9][a-z0-9-]{0,39}$'),
  name_en text not null check (name_en <> ''),
  name_fr text not null check (name_fr <> ''),
  visits int not null constraint plan_visits check (visits between 0 and 24),
  price_minor bigint not null constraint plan_price check (price_minor >= 0),
  currency char(3) not null,
  discount_percent numeric(5, 2) not null default 0 constraint plan_discount check (discount_percent between 0 and 100),
  instalments int not null default 1 constraint plan_instalments check (instalments between 1 and 12),
  included_minutes int not null default 0 constraint plan_included_minutes check (included_minutes between 0 and 100000),
  covers_repairs boolean not null default false,
  on_sale_from date,
  withdrawn_on date,
  version int not null default 0,
  primary key (tenant_id, id),
  constraint plan_code_taken unique (tenant_id, code),
  constraint plan_withdrawn_after_sale check (withdrawn_on is null or on_sale_from is not null)
);
call owned('plan');

create table plan_task (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  plan_id uuid not null,
  task_code text not null,
  cadence jsonb,
  position int not null default 0,
  primary key (tenant_id, id),
  foreign key (tenant_id, plan_id) references plan (tenant_id, id),
  constraint plan_names_a_task_once unique (tenant_id, plan_id, task_code)
);
call owned('plan_task');

create table plan_part (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  plan_id uuid not null,
  part_kind text not null,
  quantity_a_year numeric(10, 2) not null constraint plan_part_quantity check (quantity_a_year > 0),
  primary key (tenant_id, id),
  foreign key (tenant_id, plan_id) references plan (tenant_id, id),
  constraint plan_names_a_part_once unique (tenant_id, plan_id, part_kind)
);
call owned('plan_part');

create table agreement (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  number int not null check (number > 0),
  home_id uuid not null,
  signer_id uuid not null,
  payer_id uuid not null,
  plan_id uuid not null,
  plan_code text not null,
  plan_name_en text not null,
  plan_name_fr text not null,
  term_from date not null,
  term_until date not null,
  price_minor bigint not null constraint agreement_price check (price_minor >= 0),
  currency char(3) not null,
  instalments int not null check (instalments between 1 and 12),
  visits int not null check (visits between 0 and 24),
  discount_percent numeric(5, 2) not null check (discount_percent between 0 and 100),
  included_minutes int not null check (included_minutes >= 0),
  covers_repairs boolean not null default false,
  language text not null check (language in ('en', 'fr')),
  offered_on date not null,
  valid_until date not null,
  renews_id uuid,
  version int not null default 0,
  primary key (tenant_id, id),
  constraint agreement_number_taken unique (tenant_id, number),
  constraint agreement_term check (term_from < term_until),
  constraint agreement_valid_after_offer check (valid_until >= offered_on),
  foreign key (tenant_id, plan_id) references plan (tenant_id, id),
  foreign key (tenant_id, renews_id) references agreement (tenant_id, id)
);
call owned('agreement');
create index agreement_of_a_home on agreement (tenant_id, home_id);
create index agreement_by_end on agreement (tenant_id, term_until);
create index agreement_of_a_payer on agreement (tenant_id, payer_id);
create index agreement_renewing on agreement (tenant_id, renews_id) where renews_id is not null;

create table agreement_unit (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  agreement_id uuid not null,
  equipment_id uuid not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, agreement_id) references agreement (tenant_id, id),
  constraint agreement_names_a_unit_once unique (tenant_id, agreement_id, equipment_id)
);
call owned('agreement_unit');

-- One promised task for one machine (no machine: for the home as a whole), with the cadence that was promised.
create table agreement_promise (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  agreement_id uuid not null,
  equipment_id uuid,
  task_code text not null,
  cadence jsonb not null,
  who text not null check (who in ('household', 'technician')),
  minutes int not null check (minutes >= 0),
  basis text not null,
  position int not null default 0,
  primary key (tenant_id, id),
  foreign key (tenant_id, agreement_id) references agreement (tenant_id, id),
  constraint agreement_promises_a_task_once unique nulls not distinct (tenant_id, agreement_id, equipment_id, task_code)
);
call owned('agreement_promise');

create table agreement_part (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  agreement_id uuid not null,
  part_kind text not null,
  quantity numeric(10, 2) not null check (quantity > 0),
  primary key (tenant_id, id),
  foreign key (tenant_id, agreement_id) references agreement (tenant_id, id),
  constraint agreement_names_a_part_once unique (tenant_id, agreement_id, part_kind)
);
call owned('agreement_part');

create table agreement_acceptance (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  agreement_id uuid not null,
  day date not null,
  by_name text not null check (by_name <> ''),
  channel text not null check (channel in ('counter', 'distance', 'home', 'elsewhere')),
  paid_by_card boolean not null default false,
  primary key (tenant_id, id),
  foreign key (tenant_id, agreement_id) references agreement (tenant_id, id),
  constraint agreement_accepted_once unique (tenant_id, agreement_id)
);
call owned('agreement_acceptance');

create table agreement_ending (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  agreement_id uuid not null,
  day date not null,
  why text not null check (why <> ''),
  primary key (tenant_id, id),
  foreign key (tenant_id, agreement_id) references agreement (tenant_id, id),
  constraint agreement_ended_once unique (tenant_id, agreement_id)
);
call owned('agreement_ending');
