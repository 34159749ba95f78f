-- What a business asks when a payment comes back or a reminder is sent: by place and day, with the reason it may.
create table fee (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  kind text not null check (kind in ('returned', 'reminder')),
  region text not null constraint fee_region_shape check (region ~ '^[A-Z]{2}-[A-Z0-9]{1,3}$'),
  from_day date not null,
  amount_minor bigint not null constraint fee_not_negative check (amount_minor >= 0),
  currency char(3) not null,
  source text not null constraint fee_has_a_source check (length(trim(source)) >= 10),
  primary key (tenant_id, id),
  constraint one_fee_a_day unique (tenant_id, kind, region, from_day)
);
call owned('fee');
revoke update, delete on fee from ${app};

-- The draft that asks for it: once for each payment that came back.
create table fee_charged (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  fee_id uuid not null,
  invoice_id uuid not null,
  payment_id uuid,
  primary key (tenant_id, id),
  foreign key (tenant_id, fee_id) references fee (tenant_id, id),
  foreign key (tenant_id, invoice_id) references invoice (tenant_id, id),
  foreign key (tenant_id, payment_id) references payment (tenant_id, id),
  constraint one_fee_a_payment unique (tenant_id, payment_id)
);
call owned('fee_charged');
revoke update, delete on fee_charged from ${app};

-- A fee is no work: the tax table may answer otherwise for it.
alter table own_tax drop constraint own_tax_work_check,
  add constraint own_tax_work_check check (work in ('any', 'maintenance', 'repair', 'installation', 'fee'));
alter table invoice_line drop constraint invoice_line_work_check,
  add constraint invoice_line_work_check check (work in ('maintenance', 'repair', 'installation', 'fee'));
