-- Filters and pads that a home gets from its plan without a visit: left at the door or posted. Each is a movement out of its place.
alter table stock_movement drop constraint stock_movement_kind_check;
alter table stock_movement add constraint stock_movement_kind_check
  check (kind in ('receipt', 'move', 'use', 'count', 'return', 'give'));

create table part_given (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  home_id uuid not null,
  agreement_id uuid not null,
  operation_id uuid not null,
  part_code text not null check (part_code <> ''),
  part_kind text not null check (part_kind <> ''),
  quantity numeric(14, 4) not null constraint part_given_quantity check (quantity > 0),
  place_id uuid not null,
  how text not null check (how in ('left', 'posted')),
  day date not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, home_id) references home (tenant_id, id),
  foreign key (tenant_id, agreement_id) references agreement (tenant_id, id),
  foreign key (tenant_id, place_id) references stock_place (tenant_id, id),
  constraint given_once unique (tenant_id, operation_id)
);
call owned('part_given');
create index part_given_under_an_agreement on part_given (tenant_id, agreement_id, part_kind);
create index part_given_to_a_home on part_given (tenant_id, home_id, day);
