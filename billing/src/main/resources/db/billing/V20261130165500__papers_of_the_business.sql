-- The business's own papers: its licence, its insurance. Each has a last day of which somebody is told in time, and a file that
-- customers can be sent.
create table business_paper (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  kind text not null check (kind in ('licence', 'insurance', 'bond', 'other')),
  name text not null check (name <> ''),
  number text check (number <> ''),
  expires_on date,
  remind_days int not null check (remind_days between 1 and 365),
  primary key (tenant_id, id)
);
call owned('business_paper');

create table business_paper_end (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  paper_id uuid not null,
  day date not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, paper_id) references business_paper (tenant_id, id),
  constraint a_paper_is_put_away_once unique (tenant_id, paper_id)
);
call owned('business_paper_end');

create table business_paper_sent (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  paper_id uuid not null,
  customer_id uuid not null,
  day date not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, paper_id) references business_paper (tenant_id, id),
  foreign key (tenant_id, customer_id) references customer (tenant_id, id)
);
call owned('business_paper_sent');
revoke update, delete on business_paper, business_paper_end, business_paper_sent from ${app};

alter table document drop constraint document_of_kind_check,
  add constraint document_of_kind_check
    check (of_kind in ('invoice', 'credit', 'report', 'offer', 'estimate', 'statement', 'receipt', 'paper'));
