-- Which business asks says nothing about how its questions are answered. The database would count whose rows are common, and
-- for a business it has not counted yet it expects one row of each table: joins are then tried row by row, and a business of a
-- few thousand documents waits for minutes. So it is told the same of every business, and never counts again.
create procedure look_alike(name regclass) language plpgsql as $$
declare
  space text;
  plain text;
begin
  select n.nspname, c.relname into space, plain
    from pg_class c join pg_namespace n on n.oid = c.relnamespace where c.oid = name;
  execute format('alter table %s alter column tenant_id set statistics 0', name);
  perform pg_clear_attribute_stats(space, plain, 'tenant_id', false);
  perform pg_restore_attribute_stats(
    'schemaname', space, 'relname', plain, 'attname', 'tenant_id', 'inherited', false,
    'null_frac', 0::real, 'avg_width', 16, 'n_distinct', 50::real);
end $$;

-- Locks a table to its business: forced row security, who made the row, what it said before, the application's grants.
create or replace procedure owned(name regclass) language plpgsql as $$
begin
  execute format('alter table %s add column made_by uuid default current_person(), '
    'add column made_at timestamptz not null default now(), add column batch uuid', name);
  execute format('alter table %s enable row level security', name);
  execute format('alter table %s force row level security', name);
  execute format('create policy own_rows on %s using (tenant_id = current_tenant()) '
    'with check (tenant_id = current_tenant())', name);
  execute format('create trigger keep_what_it_said after update or delete on %s '
    'for each row execute function keep_what_it_said()', name);
  execute format('grant select, insert, update, delete on %s to ${app}', name);
  call look_alike(name);
end $$;

do $$
declare
  one regclass;
begin
  for one in
    select c.oid from pg_class c join pg_attribute a on a.attrelid = c.oid and a.attname = 'tenant_id'
     where c.relkind = 'r' and c.relnamespace = 'public'::regnamespace and not a.attisdropped
  loop
    call look_alike(one);
  end loop;
end $$;
