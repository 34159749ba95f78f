-- Who answers for a part and its work before the plan and the price are asked; rows are followed by newer ones and never changed.
-- How long we answer for our own work, by kind of work.
create table labour_guarantee (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  work text not null check (work in ('maintenance', 'repair')),
  from_day date not null,
  months int not null constraint guarantee_months check (months between 0 and 240),
  primary key (tenant_id, id),
  constraint one_guarantee_a_day unique (tenant_id, work, from_day)
);
call owned('labour_guarantee');
revoke update, delete on labour_guarantee from ${app};

-- How long a maker answers for a part from the day it was fitted.
create table part_warranty (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  part_code text not null check (part_code <> ''),
  from_day date not null,
  months int not null constraint part_warranty_months check (months between 0 and 480),
  basis text not null check (basis <> ''),
  primary key (tenant_id, id),
  constraint one_part_warranty_a_day unique (tenant_id, part_code, from_day)
);
call owned('part_warranty');
revoke update, delete on part_warranty from ${app};

-- How long the law lets a machine be kept in good working order for nothing, by place and the day it was installed.
create table legal_warranty (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  region text not null check (region <> ''),
  kind text not null default '',
  from_day date not null,
  months int not null constraint legal_warranty_months check (months between 0 and 480),
  source text not null check (source <> ''),
  primary key (tenant_id, id),
  constraint one_legal_warranty_a_day unique (tenant_id, region, kind, from_day)
);
call owned('legal_warranty');
revoke update, delete on legal_warranty from ${app};
