-- Somebody rang: what they said, who was at risk, what they were promised and told, and what became of it. A call and its
-- outcome are written once and stay.
create table call (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  home_id uuid not null,
  agreement_id uuid,
  caller text not null check (caller <> ''),
  phone text,
  rang_at timestamptz not null,
  trouble text not null check (trouble in
    ('no_heat', 'no_cooling', 'water', 'noise', 'smell', 'alarm', 'thermostat', 'other')),
  words text not null check (words <> ''),
  heat text not null check (heat in ('yes', 'no', 'unknown')),
  risks text[] not null check (risks <@ array['alarm', 'gas', 'symptoms', 'water', 'age', 'infant']),
  told_to_leave boolean not null,
  promised_by timestamptz not null,
  told_minor bigint check (told_minor >= 0),
  currency char(3),
  told_words text,
  primary key (tenant_id, id),
  foreign key (tenant_id, home_id) references home (tenant_id, id),
  foreign key (tenant_id, agreement_id) references agreement (tenant_id, id),
  constraint a_promise_comes_after_the_ring check (promised_by >= rang_at),
  constraint told_money_has_its_currency check ((told_minor is null) = (currency is null)),
  constraint life_comes_first check (told_to_leave or not (risks && array['alarm', 'gas', 'symptoms']))
);
call owned('call');
create index call_of_a_home on call (tenant_id, home_id);
create index call_by_ring on call (tenant_id, rang_at);
revoke update, delete on call from ${app};

create table call_outcome (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  call_id uuid not null,
  how text not null check (how in ('visit', 'advice', 'nothing')),
  why text not null,
  visit_id uuid,
  at timestamptz not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, call_id) references call (tenant_id, id),
  foreign key (tenant_id, visit_id) references visit (tenant_id, id),
  constraint a_call_is_answered_once unique (tenant_id, call_id),
  constraint a_visit_answers_one_call unique (tenant_id, visit_id),
  constraint only_a_visit_has_a_visit check ((how = 'visit') = (visit_id is not null)),
  constraint call_outcome_says_why check (why <> '')
);
call owned('call_outcome');
revoke update, delete on call_outcome from ${app};

-- Within how many hours the business answers, where it has written its own figure.
create table answer_time (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  urgency text not null check (urgency in ('life', 'urgent', 'soon', 'ordinary')),
  with_plan boolean not null,
  hours int not null check (hours between 1 and 720),
  primary key (tenant_id, id),
  constraint one_answer_time unique (tenant_id, urgency, with_plan)
);
call owned('answer_time');

-- Whose telephone rings outside hours: one person a day, until_day the day after the last.
create table on_call (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  person_id uuid not null,
  from_day date not null,
  until_day date not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, person_id) references membership (tenant_id, person_id),
  constraint on_call_lasts check (from_day < until_day),
  constraint somebody_is_on_call_already exclude using gist (
    tenant_id with =, daterange(from_day, until_day) with &&)
);
call owned('on_call');
