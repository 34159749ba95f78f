-- What stands behind a price: mark-up rules, how labour is counted, zones of travel.

-- A part may have a cost alone: its price then follows the mark-up rule of the day.
alter table price alter column price_minor drop not null;
alter table price add constraint price_or_cost check (
  price_minor is not null or (item_kind = 'part' and cost_minor is not null));

-- Price = cost x (1 + percent), rounded half-up to the step: for one part, for a kind of part, or by what it costs.
-- Without a percent the rule of a part or of a kind ends on that day. Rules by cost hold together, as written for a day.
create table mark_up (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  scope text not null check (scope in ('part', 'kind', 'cost')),
  item text not null,
  valid_from date not null,
  cost_from_minor bigint not null default 0 constraint mark_up_cost_from check (cost_from_minor >= 0),
  percent numeric(7, 2) constraint mark_up_percent check (percent between 0 and 2000),
  step_minor bigint not null constraint mark_up_step check (step_minor between 1 and 100000),
  currency char(3) not null,
  primary key (tenant_id, id),
  constraint mark_up_scope_and_item check ((scope = 'cost') = (item = '')),
  constraint only_a_parts_or_a_kinds_rule_ends check (percent is not null or scope <> 'cost'),
  constraint only_rules_by_cost_have_a_least_cost check (cost_from_minor = 0 or scope = 'cost'),
  constraint one_mark_up_a_day unique (tenant_id, scope, item, valid_from, cost_from_minor)
);
call owned('mark_up');

-- How minutes become billed hours, from a day on.
create table labour_terms (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  valid_from date not null,
  step_minutes int not null constraint labour_step check (step_minutes in (6, 10, 15, 30, 60)),
  minimum_minutes int not null constraint labour_minimum check (minimum_minutes between 0 and 480),
  primary key (tenant_id, id),
  constraint one_way_of_counting_a_day unique (tenant_id, valid_from)
);
call owned('labour_terms');

-- Where a trip costs something else: by the beginning of the postal code, or by the distance from the shop.
create table travel_zone (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  code text not null constraint travel_zone_code check (
    code ~ '^[a-z0-9][a-z0-9-]{0,29}$' and code not in ('visit', 'no-access')),
  valid_from date not null,
  name_en text not null check (name_en <> ''),
  name_fr text not null check (name_fr <> ''),
  postals text[] not null,
  within_km int constraint travel_zone_km check (within_km between 1 and 2000),
  closed boolean not null default false,
  primary key (tenant_id, id),
  constraint one_zone_a_day unique (tenant_id, code, valid_from)
);
call owned('travel_zone');
