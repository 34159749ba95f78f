-- How long a day's work took, and which businesses have a day to let pass.
alter table day_passed add column took_ms int check (took_ms >= 0);

create function businesses_whose_day_waits(at timestamptz) returns setof uuid language sql stable security definer
  set search_path = pg_catalog, public as $$
  select b.id from business b
   where coalesce((select max(d.day) from day_passed d where d.tenant_id = b.id), b.opened_on - 1) < (at at time zone b.zone)::date
$$;
revoke execute on function businesses_whose_day_waits(timestamptz) from public;
grant execute on function businesses_whose_day_waits(timestamptz) to ${lookup};
