-- A holiday of the place on which this business does otherwise than is usual there.
create table holiday_choice (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  holiday text not null check (holiday ~ '^[a-z][a-z-]*$' and length(holiday) <= 80),
  kept boolean not null,
  primary key (tenant_id, id),
  constraint one_choice_a_holiday unique (tenant_id, holiday)
);
call owned('holiday_choice');
