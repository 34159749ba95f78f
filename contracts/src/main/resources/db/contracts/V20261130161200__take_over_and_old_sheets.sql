-- The day on which a running shop was taken over: what lies before it was another's to invoice, to plan and to remind.
create table take_over (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  day date not null,
  primary key (tenant_id, id),
  constraint one_take_over unique (tenant_id)
);
call owned('take_over');

-- An old spreadsheet as it came, and how a person said that it is read. Forgotten, its bytes are gone and the reading stays.
create table old_sheet (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  name text not null check (length(name) <= 100),
  file bytea,
  reading jsonb,
  read_at timestamptz,
  brought_at timestamptz,
  primary key (tenant_id, id),
  constraint read_with_a_reading check ((reading is null) = (read_at is null))
);
call owned('old_sheet');
drop trigger keep_what_it_said on old_sheet;

-- An agreement that ran before the take-over, with what was known of it then. What is still asked of its price is drafted once.
create table agreement_taken_over (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  agreement_id uuid not null,
  day date not null,
  paid_minor bigint check (paid_minor >= 0),
  asked_minor bigint not null check (asked_minor >= 0),
  visits_done int check (visits_done between 0 and 24),
  last_visit date,
  primary key (tenant_id, id),
  foreign key (tenant_id, agreement_id) references agreement (tenant_id, id),
  constraint an_agreement_is_taken_over_once unique (tenant_id, agreement_id)
);
call owned('agreement_taken_over');
revoke update, delete on agreement_taken_over from ${app};
