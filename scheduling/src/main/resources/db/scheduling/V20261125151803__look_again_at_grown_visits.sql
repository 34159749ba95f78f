-- While a season is written the autovacuum's look finds tables whose rows are not yet committed and calls them empty; each
-- reference is then checked by reading all of a business's visits. Whoever writes many years asks the planner to look again
-- at the tables that have more than doubled, between the visits and what refers to them; only one at a time does.
create function look_again_at_visits() returns void language plpgsql security definer
  set search_path = pg_catalog, public as $$
declare
  grown regclass;
begin
  for grown in
    select c.oid from pg_class c
     where c.oid = any (array['year_planned', 'visit', 'visit_task', 'household_task', 'unkept_promise']::regclass[])
       and (pg_relation_size(c.oid) / 8192 > greatest(c.relpages, 0) * 2 + 8
            or (c.reltuples < 100 and pg_relation_size(c.oid) > 8 * 8192))
     order by c.oid
  loop
    if pg_try_advisory_xact_lock(hashtextextended('look_again', grown::oid::bigint)) then
      execute format('analyze %s', grown);
    end if;
  end loop;
end $$;
revoke execute on function look_again_at_visits() from public;
grant execute on function look_again_at_visits() to ${app};
