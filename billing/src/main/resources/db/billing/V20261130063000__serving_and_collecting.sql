-- What the crew does where something is unpaid: from so many days and so much on they ask the office, or do not serve.
create table serving_rule (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  what text not null check (what in ('ask', 'not')),
  days_late int not null constraint serving_days check (days_late between 1 and 3650),
  least_minor bigint not null constraint serving_amount check (least_minor >= 0),
  primary key (tenant_id, id),
  constraint one_rule_a_word unique (tenant_id, what)
);
call owned('serving_rule');

-- What holds for one customer whatever the rules say; the newest row counts, and 'rule' goes back to them.
create table serving_word (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  customer_id uuid not null,
  day date not null,
  what text not null check (what in ('serve', 'ask', 'not', 'rule')),
  why text not null constraint serving_says_why check (length(trim(why)) >= 3),
  primary key (tenant_id, id),
  foreign key (tenant_id, customer_id) references customer (tenant_id, id)
);
call owned('serving_word');
create index serving_word_of_customer on serving_word (tenant_id, customer_id, id);
revoke update, delete on serving_word from ${app};

-- Who lets the business collect what is due from their account, until they no longer do.
create table debit_mandate (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  customer_id uuid not null,
  signed_on date not null,
  reference text not null constraint mandate_has_a_reference check (trim(reference) <> '' and length(reference) <= 60),
  primary key (tenant_id, id),
  foreign key (tenant_id, customer_id) references customer (tenant_id, id)
);
call owned('debit_mandate');
create index debit_mandate_of_customer on debit_mandate (tenant_id, customer_id);
revoke update, delete on debit_mandate from ${app};

create table debit_mandate_end (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  mandate_id uuid not null,
  day date not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, mandate_id) references debit_mandate (tenant_id, id),
  constraint a_mandate_ends_once unique (tenant_id, mandate_id)
);
call owned('debit_mandate_end');
revoke update, delete on debit_mandate_end from ${app};
