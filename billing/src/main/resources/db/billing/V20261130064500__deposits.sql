-- Money taken before the work: a payment that pays nothing by itself, and what of it went back.
create table deposit (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  payment_id uuid not null,
  number bigint not null check (number > 0),
  home_id uuid not null,
  agreement_id uuid,
  call_id uuid,
  words text not null constraint a_deposit_says_what_for check (trim(words) <> ''),
  primary key (tenant_id, id),
  foreign key (tenant_id, payment_id) references payment (tenant_id, id),
  foreign key (tenant_id, home_id) references home (tenant_id, id),
  foreign key (tenant_id, agreement_id) references agreement (tenant_id, id),
  foreign key (tenant_id, call_id) references call (tenant_id, id),
  constraint one_deposit_a_payment unique (tenant_id, payment_id),
  constraint one_receipt_a_number unique (tenant_id, number)
);
call owned('deposit');
create index deposit_of_home on deposit (tenant_id, home_id);
create index deposit_of_agreement on deposit (tenant_id, agreement_id) where agreement_id is not null;
create index deposit_of_call on deposit (tenant_id, call_id) where call_id is not null;

create table deposit_return (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  deposit_id uuid not null,
  refund_id uuid not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, deposit_id) references deposit (tenant_id, id),
  foreign key (tenant_id, refund_id) references payment (tenant_id, id),
  constraint a_refund_is_of_one_deposit unique (tenant_id, refund_id)
);
call owned('deposit_return');
create index deposit_return_of_deposit on deposit_return (tenant_id, deposit_id);
revoke update, delete on deposit, deposit_return from ${app};

-- A deposit has its receipt.
alter table document drop constraint document_of_kind_check,
  add constraint document_of_kind_check
    check (of_kind in ('invoice', 'credit', 'report', 'offer', 'estimate', 'statement', 'receipt'));
alter table document_order drop constraint document_order_of_kind_check,
  add constraint document_order_of_kind_check
    check (of_kind in ('invoice', 'credit', 'report', 'offer', 'estimate', 'statement', 'receipt'));
