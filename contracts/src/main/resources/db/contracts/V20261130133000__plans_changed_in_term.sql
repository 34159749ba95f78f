-- An offer that takes another agreement's place from its first day on: with the yes to it the other one ends.
create table plan_change (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  agreement_id uuid not null,
  instead_of_id uuid not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, agreement_id) references agreement (tenant_id, id),
  foreign key (tenant_id, instead_of_id) references agreement (tenant_id, id),
  constraint an_offer_takes_one_agreements_place unique (tenant_id, agreement_id),
  constraint another_agreements_place check (agreement_id <> instead_of_id)
);
call owned('plan_change');
create index plan_change_of on plan_change (tenant_id, instead_of_id);
revoke update, delete on plan_change from ${app};
