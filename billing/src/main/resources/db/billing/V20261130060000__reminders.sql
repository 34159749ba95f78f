-- Reminders of what is late: the business's own ladder, what was written, and whom it does not remind.

-- How reminders go out: not at all, by a list with a person's yes, or by themselves as the days pass.
create table reminder_way (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  how text not null check (how in ('never', 'list', 'daily')),
  primary key (tenant_id, id),
  constraint one_reminder_way unique (tenant_id)
);
call owned('reminder_way');

create table reminder_step (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  days_late int not null constraint step_days check (days_late between 1 and 365),
  tone text not null check (tone in ('friendly', 'firm', 'last')),
  subject_en text not null constraint step_says_what check (subject_en <> '' and subject_fr <> ''),
  subject_fr text not null,
  body_en text not null constraint step_says_it check (body_en <> '' and body_fr <> ''),
  body_fr text not null,
  asks_fee boolean not null default false,
  primary key (tenant_id, id),
  constraint one_step_a_day unique (tenant_id, days_late)
);
call owned('reminder_step');

-- One letter to one customer, about everything of theirs that a step is due for.
create table reminder (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  customer_id uuid not null,
  day date not null,
  days_late int not null,
  tone text not null check (tone in ('friendly', 'firm', 'last')),
  primary key (tenant_id, id),
  foreign key (tenant_id, customer_id) references customer (tenant_id, id)
);
call owned('reminder');
create index reminder_of_customer on reminder (tenant_id, customer_id);
revoke update, delete on reminder from ${app};

-- What it asked for, as it stood when it was written; a step is asked once for a document.
create table reminder_item (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  reminder_id uuid not null,
  invoice_id uuid not null,
  days_late int not null,
  open_minor bigint not null constraint reminded_of_something check (open_minor > 0),
  withdrawn boolean not null default false,
  primary key (tenant_id, id),
  foreign key (tenant_id, reminder_id) references reminder (tenant_id, id),
  foreign key (tenant_id, invoice_id) references invoice (tenant_id, id)
);
call owned('reminder_item');
create unique index a_step_is_asked_once on reminder_item (tenant_id, invoice_id, days_late) where not withdrawn;
create index reminder_item_of_reminder on reminder_item (tenant_id, reminder_id);

-- A customer, or one document of theirs, that is not reminded, and why.
create table reminder_hold (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  customer_id uuid not null,
  invoice_id uuid,
  day date not null,
  kind text not null check (kind in ('dispute', 'promise', 'hold')),
  why text not null constraint a_hold_says_why check (length(trim(why)) >= 3),
  until_day date,
  primary key (tenant_id, id),
  foreign key (tenant_id, customer_id) references customer (tenant_id, id),
  foreign key (tenant_id, invoice_id) references invoice (tenant_id, id)
);
call owned('reminder_hold');
create index reminder_hold_of_customer on reminder_hold (tenant_id, customer_id);
revoke update, delete on reminder_hold from ${app};

create table reminder_hold_end (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  hold_id uuid not null,
  day date not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, hold_id) references reminder_hold (tenant_id, id),
  constraint a_hold_ends_once unique (tenant_id, hold_id)
);
call owned('reminder_hold_end');
revoke update, delete on reminder_hold_end from ${app};

alter table fee_charged add column reminder_id uuid,
  add foreign key (tenant_id, reminder_id) references reminder (tenant_id, id),
  add constraint one_fee_a_reminder unique (tenant_id, reminder_id);

-- A message that was no longer true when its turn came: it never leaves.
alter table outbox add column withdrawn_at timestamptz,
  add constraint outbox_withdrawn_never_left check (withdrawn_at is null or (sent_at is null and printed_at is null));
