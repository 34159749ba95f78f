-- What the business's own work costs beyond wages and parts, from a day on: set-up at each visit, overhead, and where its trips
-- begin. What an hour of a technician and a part cost stands in the price book.
create table running_cost (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  valid_from date not null,
  set_up_minutes int not null constraint set_up_minutes check (set_up_minutes between 0 and 240),
  overhead text not null check (overhead in ('percent', 'hour')),
  overhead_percent numeric(6, 2) constraint overhead_percent check (overhead_percent between 0 and 1000),
  overhead_minor bigint constraint overhead_not_negative check (overhead_minor >= 0),
  currency char(3) not null,
  latitude numeric(9, 6) check (latitude between -90 and 90),
  longitude numeric(9, 6) check (longitude between -180 and 180),
  primary key (tenant_id, id),
  constraint one_running_cost_a_day unique (tenant_id, valid_from),
  constraint overhead_is_said check ((overhead = 'percent') = (overhead_percent is not null)
    and (overhead = 'hour') = (overhead_minor is not null)),
  constraint a_place_has_both check ((latitude is null) = (longitude is null))
);
call owned('running_cost');
