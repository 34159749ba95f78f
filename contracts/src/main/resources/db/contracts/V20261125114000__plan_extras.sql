-- A plan's price holds for so many machines of a kind; each further one costs so much more.
create table plan_extra (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  plan_id uuid not null,
  kind text not null check (kind <> ''),
  included int not null constraint plan_extra_included check (included between 0 and 1000),
  price_minor bigint not null constraint plan_extra_price check (price_minor >= 0),
  primary key (tenant_id, id),
  foreign key (tenant_id, plan_id) references plan (tenant_id, id),
  constraint plan_prices_a_kind_once unique (tenant_id, plan_id, kind)
);
call owned('plan_extra');
