-- What a repair will cost, said before it is made: written, offered once, answered once by a named person. What was offered
-- stands as it was offered; what goes beyond it is a row of its own with its own yes.
create table estimate (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  version int not null default 0,
  home_id uuid not null,
  customer_id uuid not null,
  language text not null check (language in ('en', 'fr')),
  call_id uuid,
  visit_id uuid,
  follow_up_id uuid,
  words text not null constraint an_estimate_says_what_for check (trim(words) <> ''),
  minutes int not null check (minutes between 0 and 14400),
  trip boolean not null,
  valid_until date not null,
  deposit_minor bigint constraint an_asked_deposit_is_an_amount check (deposit_minor > 0),
  currency char(3) not null,
  written_on date not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, home_id) references home (tenant_id, id),
  foreign key (tenant_id, customer_id) references customer (tenant_id, id),
  foreign key (tenant_id, call_id) references call (tenant_id, id),
  foreign key (tenant_id, visit_id) references visit (tenant_id, id),
  foreign key (tenant_id, follow_up_id) references follow_up (tenant_id, id)
);
call owned('estimate');
create index estimate_of_home on estimate (tenant_id, home_id);
create index estimate_of_customer on estimate (tenant_id, customer_id);
create index estimate_of_call on estimate (tenant_id, call_id) where call_id is not null;
create index estimate_of_visit on estimate (tenant_id, visit_id) where visit_id is not null;
revoke delete on estimate from ${app};

-- What was asked for: a part by its code, or a line in somebody's own words.
create table estimate_item (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  estimate_id uuid not null,
  position int not null,
  kind text not null check (kind in ('part', 'other')),
  item_code text,
  quantity numeric(12, 4) not null check (quantity > 0),
  words text,
  unit text,
  unit_price_minor bigint check (unit_price_minor >= 0),
  work text check (work in ('maintenance', 'repair', 'installation')),
  primary key (tenant_id, id),
  foreign key (tenant_id, estimate_id) references estimate (tenant_id, id),
  foreign key (tenant_id, item_code) references part (tenant_id, code),
  constraint an_item_is_whole check (
    case kind when 'part' then item_code is not null
              else words is not null and unit is not null and unit_price_minor is not null and work is not null end)
);
call owned('estimate_item');
create index item_of_estimate on estimate_item (tenant_id, estimate_id);

create table estimate_offer (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  estimate_id uuid not null,
  series text not null,
  number bigint not null check (number > 0),
  label text not null,
  day date not null,
  subtotal_minor bigint not null,
  tax_minor bigint not null,
  total_minor bigint not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, estimate_id) references estimate (tenant_id, id),
  constraint an_estimate_is_offered_once unique (tenant_id, estimate_id),
  constraint one_estimate_a_number unique (tenant_id, series, number),
  constraint an_offer_adds_up check (total_minor = subtotal_minor + tax_minor)
);
call owned('estimate_offer');
revoke update, delete on estimate_offer from ${app};

create table estimate_line (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  estimate_id uuid not null,
  position int not null,
  kind text not null check (kind in ('part', 'labour', 'travel', 'other')),
  item_code text,
  coverage text not null check (coverage in ('included', 'discounted', 'billable')),
  words_en text not null,
  words_fr text not null,
  why_en text not null,
  why_fr text not null,
  quantity numeric(12, 4) not null,
  unit text not null,
  unit_price_minor bigint not null,
  discount_minor bigint not null,
  net_minor bigint not null,
  work text not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, estimate_id) references estimate (tenant_id, id),
  constraint one_line_a_place unique (tenant_id, estimate_id, position)
);
call owned('estimate_line');
revoke update, delete on estimate_line from ${app};

create table estimate_tax (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  estimate_id uuid not null,
  position int not null,
  code text not null,
  label_en text not null,
  label_fr text not null,
  percent numeric(7, 4) not null,
  registration text,
  base_minor bigint not null,
  amount_minor bigint not null,
  lines int[] not null,
  source text not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, estimate_id) references estimate (tenant_id, id),
  constraint one_tax_a_place unique (tenant_id, estimate_id, position)
);
call owned('estimate_tax');
revoke update, delete on estimate_tax from ${app};

-- Yes, no, or taken back by us. Who said it, when, and how it reached us.
create table estimate_answer (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  estimate_id uuid not null,
  how text not null check (how in ('accepted', 'refused', 'withdrawn')),
  by_name text not null constraint an_answer_has_a_name check (trim(by_name) <> ''),
  at timestamptz not null,
  channel text check (channel in ('link', 'call', 'site')),
  words text,
  primary key (tenant_id, id),
  foreign key (tenant_id, estimate_id) references estimate (tenant_id, id),
  constraint an_estimate_is_answered_once unique (tenant_id, estimate_id),
  constraint an_answer_has_its_channel check ((how = 'withdrawn') = (channel is null))
);
call owned('estimate_answer');
revoke update, delete on estimate_answer from ${app};

-- The visits in which the accepted work is done: one, or one more where the first did not finish it.
create table estimate_work (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  estimate_id uuid not null,
  visit_id uuid not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, estimate_id) references estimate (tenant_id, id),
  foreign key (tenant_id, visit_id) references visit (tenant_id, id),
  constraint a_visit_does_an_estimate_once unique (tenant_id, estimate_id, visit_id)
);
call owned('estimate_work');
create index work_of_visit on estimate_work (tenant_id, visit_id);
revoke update, delete on estimate_work from ${app};

-- The customer said yes to more: the whole amount before taxes from now on.
create table estimate_more (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  estimate_id uuid not null,
  accepted_minor bigint not null check (accepted_minor > 0),
  currency char(3) not null,
  by_name text not null constraint a_yes_to_more_has_a_name check (trim(by_name) <> ''),
  at timestamptz not null,
  channel text not null check (channel in ('link', 'call', 'site')),
  words text not null constraint a_yes_to_more_says_for_what check (trim(words) <> ''),
  primary key (tenant_id, id),
  foreign key (tenant_id, estimate_id) references estimate (tenant_id, id)
);
call owned('estimate_more');
create index more_of_estimate on estimate_more (tenant_id, estimate_id);
revoke update, delete on estimate_more from ${app};

create table estimate_deposit (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  estimate_id uuid not null,
  deposit_id uuid not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, estimate_id) references estimate (tenant_id, id),
  foreign key (tenant_id, deposit_id) references deposit (tenant_id, id),
  constraint a_deposit_is_of_one_estimate unique (tenant_id, deposit_id)
);
call owned('estimate_deposit');
create index deposit_of_estimate on estimate_deposit (tenant_id, estimate_id);
revoke update, delete on estimate_deposit from ${app};

-- Where the owner has read that a repair under a visit the customer asked for may be signed on the spot.
create table site_consent (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  region text not null constraint site_consent_region_shape check (region ~ '^[A-Z]{2}-[A-Z0-9]{1,3}$'),
  from_day date not null,
  allowed boolean not null,
  source text not null constraint site_consent_has_a_source check (length(trim(source)) >= 10),
  primary key (tenant_id, id),
  constraint one_site_consent_a_day unique (tenant_id, region, from_day)
);
call owned('site_consent');
revoke update, delete on site_consent from ${app};

-- What was offered, or taken back, never changes.
create function keep_offered_estimate() returns trigger language plpgsql as $$
declare
  named uuid := case when tg_table_name = 'estimate' then to_jsonb(old) ->> 'id'
                     else coalesce(to_jsonb(new), to_jsonb(old)) ->> 'estimate_id' end;
  tenant uuid := coalesce(to_jsonb(new), to_jsonb(old)) ->> 'tenant_id';
begin
  if exists (select 1 from estimate_offer o where o.tenant_id = tenant and o.estimate_id = named)
      or exists (select 1 from estimate_answer a where a.tenant_id = tenant and a.estimate_id = named) then
    raise exception 'an offered estimate never changes'
      using errcode = '23514', constraint = 'an_offered_estimate_stands', table = tg_table_name;
  end if;
  return coalesce(new, old);
end $$;
create trigger keep_offered before update or delete on estimate for each row execute function keep_offered_estimate();
create trigger keep_offered before insert or update or delete on estimate_item
  for each row execute function keep_offered_estimate();

alter table numbering drop constraint numbering_kind_check,
  add constraint numbering_kind_check check (kind in ('invoice', 'credit', 'estimate'));
