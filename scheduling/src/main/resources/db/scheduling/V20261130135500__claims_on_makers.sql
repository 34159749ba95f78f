-- A part was replaced under its maker's warranty: what went out, what came in, and the credit that the maker owes.
create table part_claim (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  visit_id uuid not null,
  home_id uuid not null,
  equipment_id uuid,
  part_code text not null check (part_code <> ''),
  old_serial text,
  new_serial text,
  maker text not null check (maker <> ''),
  claim_number text,
  claimed_on date not null,
  returned_on date,
  credit_minor bigint check (credit_minor >= 0),
  currency char(3),
  version int not null default 0,
  primary key (tenant_id, id),
  foreign key (tenant_id, visit_id) references visit (tenant_id, id),
  foreign key (tenant_id, home_id) references home (tenant_id, id),
  foreign key (tenant_id, equipment_id) references equipment (tenant_id, id),
  constraint claimed_credit_has_its_currency check ((credit_minor is null) = (currency is null)),
  constraint a_claimed_part_goes_back_later check (returned_on >= claimed_on)
);
call owned('part_claim');
create index part_claim_of_a_visit on part_claim (tenant_id, visit_id);
create index part_claim_of_a_home on part_claim (tenant_id, home_id);

create table claim_answer (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  claim_id uuid not null,
  day date not null,
  amount_minor bigint check (amount_minor > 0),
  currency char(3),
  words text,
  primary key (tenant_id, id),
  foreign key (tenant_id, claim_id) references part_claim (tenant_id, id),
  constraint a_claim_is_answered_once unique (tenant_id, claim_id),
  constraint answered_credit_has_its_currency check ((amount_minor is null) = (currency is null)),
  constraint a_refused_claim_says_why check (amount_minor is not null or words <> '')
);
call owned('claim_answer');
revoke update, delete on claim_answer from ${app};
