-- We came back for our own work: the visit answers an earlier one, and this row says why.
create table return_visit (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  visit_id uuid not null,
  cause text not null check (cause in ('workmanship', 'part', 'diagnosis', 'unfinished', 'setting', 'other')),
  part_code text,
  equipment_id uuid,
  words text not null check (words <> ''),
  primary key (tenant_id, id),
  foreign key (tenant_id, visit_id) references visit (tenant_id, id),
  foreign key (tenant_id, equipment_id) references equipment (tenant_id, id),
  constraint a_return_has_one_cause unique (tenant_id, visit_id)
);
call owned('return_visit');
create index visit_of_what_it_answers on visit (tenant_id, answers_id) where answers_id is not null;
