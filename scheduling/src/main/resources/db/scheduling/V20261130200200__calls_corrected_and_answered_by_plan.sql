-- What was written down of a call is put right by a new version; the call itself and every version stay as they were written.
create table call_correction (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  call_id uuid not null,
  caller text not null check (caller <> ''),
  phone text,
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
  why text not null check (why <> ''),
  person_id uuid not null,
  at timestamptz not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, call_id) references call (tenant_id, id),
  constraint corrected_money_has_its_currency check ((told_minor is null) = (currency is null)),
  constraint life_comes_first_still check (told_to_leave or not (risks && array['alarm', 'gas', 'symptoms']))
);
call owned('call_correction');
create index correction_of_a_call on call_correction (tenant_id, call_id, id);

-- Within how many hours a plan answers; an agreement keeps what its plan said when its term began.
create table plan_answer (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  plan_id uuid not null,
  day date not null,
  hours int check (hours between 1 and 720),
  nights boolean not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, plan_id) references plan (tenant_id, id)
);
call owned('plan_answer');
create index answer_of_a_plan on plan_answer (tenant_id, plan_id, day);

revoke update, delete on call_correction, plan_answer from ${app};
