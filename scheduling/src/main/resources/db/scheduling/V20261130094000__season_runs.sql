-- A season planned in the background: the question, how far it is, the answer by visit, and what a person accepted of it.
create table season_run (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  season_id uuid not null,
  from_day date not null,
  until_day date not null,
  first_day date not null,
  without uuid[] not null default '{}',
  more int not null default 0 constraint season_run_more_hands check (more between 0 and 5),
  more_from date,
  more_until date,
  more_tickets text[] not null default '{}',
  idle_weekdays int[] not null default '{}' constraint season_run_idle check (idle_weekdays <@ array[1, 2, 3, 4, 5, 6, 7]),
  visits int not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, season_id) references season (tenant_id, id),
  constraint season_run_days check (from_day < until_day),
  constraint season_run_more_has_days check (more = 0 or (more_from < more_until))
);
call owned('season_run');

-- How far the search is; the plan is the best so far, from which whoever comes after a break goes on.
create table season_run_step (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  run_id uuid not null,
  rounds int not null,
  all_rounds int not null,
  without_day int not null,
  plan text not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, run_id) references season_run (tenant_id, id),
  constraint a_run_is_at_a_round_once unique (tenant_id, run_id, rounds)
);
call owned('season_run_step');

create table season_run_halt (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  run_id uuid not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, run_id) references season_run (tenant_id, id),
  constraint a_season_run_is_halted_once unique (tenant_id, run_id)
);
call owned('season_run_halt');

create table season_run_end (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  run_id uuid not null,
  how text not null check (how in ('done', 'halted')),
  driving int not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, run_id) references season_run (tenant_id, id),
  constraint a_season_run_ends_once unique (tenant_id, run_id)
);
call owned('season_run_end');

-- A visit's day in the answer, or why it has none. Who is tried out works here only in thought.
create table season_run_visit (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  run_id uuid not null,
  visit_id uuid not null,
  technician_id uuid,
  second_id uuid,
  tried boolean not null default false,
  day date,
  starts time,
  ends time,
  road int,
  why text,
  primary key (tenant_id, id),
  foreign key (tenant_id, run_id) references season_run (tenant_id, id),
  foreign key (tenant_id, visit_id) references visit (tenant_id, id),
  constraint a_run_answers_a_visit_once unique (tenant_id, run_id, visit_id),
  constraint a_day_or_a_reason check ((day is null) = (why is not null))
);
call owned('season_run_visit');

-- What would keep the rest: a day of somebody more, or, without a day, a ticket more in the crew.
create table season_run_more (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  run_id uuid not null,
  day date,
  technicians int not null,
  tickets text[] not null,
  visits uuid[] not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, run_id) references season_run (tenant_id, id)
);
call owned('season_run_more');

-- What the crew of the question holds, week by week.
create table season_run_week (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  run_id uuid not null,
  monday date not null,
  minutes int not null,
  booked int not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, run_id) references season_run (tenant_id, id),
  constraint a_week_of_a_run_once unique (tenant_id, run_id, monday)
);
call owned('season_run_week');

create table season_run_acceptance (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  run_id uuid not null,
  visits int not null check (visits > 0),
  primary key (tenant_id, id),
  foreign key (tenant_id, run_id) references season_run (tenant_id, id)
);
call owned('season_run_acceptance');
revoke update, delete on season_run, season_run_step, season_run_halt, season_run_end, season_run_visit, season_run_more,
  season_run_week, season_run_acceptance from ${app};

-- The businesses whose timer has a season to go on with.
create function businesses_with_open_seasons() returns setof uuid language sql stable security definer
  set search_path = pg_catalog, public as $$
  select distinct r.tenant_id from season_run r
   where not exists (select 1 from season_run_end e where e.tenant_id = r.tenant_id and e.run_id = r.id)
$$;
revoke execute on function businesses_with_open_seasons() from public;
grant execute on function businesses_with_open_seasons() to ${lookup};
