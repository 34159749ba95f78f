-- How roads are reckoned without a map: by how much they are longer than the straight line, and how fast one drives. The newest counts.
create table road_pace (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  detour_percent int not null check (detour_percent between 100 and 300),
  km_an_hour int not null check (km_an_hour between 10 and 130),
  primary key (tenant_id, id)
);
call owned('road_pace');
revoke update, delete on road_pace from ${app};
