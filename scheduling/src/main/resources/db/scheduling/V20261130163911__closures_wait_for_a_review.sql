-- Which closures somebody looks over before report and draft leave: rows of the business, each until somebody ends it.
create table review_rule (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  kind text not null check (kind in ('technician', 'severity', 'first', 'beside')),
  person_id uuid,
  level text check (level in ('recommended', 'urgent', 'do_not_use')),
  first_count int check (first_count between 1 and 500),
  from_day date not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, person_id) references membership (tenant_id, person_id),
  constraint a_review_rule_says_whose check ((kind = 'technician') <= (person_id is not null)),
  constraint a_review_rule_says_how_grave check ((kind = 'severity') = (level is not null)),
  constraint a_review_rule_says_how_many check ((kind = 'first') = (first_count is not null))
);
call owned('review_rule');
revoke update, delete on review_rule from ${app};

create table review_rule_end (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  rule_id uuid not null,
  day date not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, rule_id) references review_rule (tenant_id, id),
  constraint a_review_rule_ends_once unique (tenant_id, rule_id)
);
call owned('review_rule_end');
revoke update, delete on review_rule_end from ${app};

-- A closure that waits, and by which rule.
create table review_hold (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  visit_id uuid not null,
  rule_id uuid not null,
  day date not null,
  at timestamptz not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, visit_id) references visit (tenant_id, id),
  foreign key (tenant_id, rule_id) references review_rule (tenant_id, id),
  constraint a_closure_waits_once unique (tenant_id, visit_id)
);
call owned('review_hold');
revoke update, delete on review_hold from ${app};

-- Somebody looked it over and said yes.
create table review_answer (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  hold_id uuid not null,
  person_id uuid not null,
  day date not null,
  at timestamptz not null,
  words text check (words <> ''),
  primary key (tenant_id, id),
  foreign key (tenant_id, hold_id) references review_hold (tenant_id, id),
  constraint a_closure_is_looked_over_once unique (tenant_id, hold_id)
);
call owned('review_answer');
revoke update, delete on review_answer from ${app};
