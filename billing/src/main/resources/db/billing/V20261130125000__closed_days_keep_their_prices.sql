-- What was earned in closed days was split by the prices of their days: no price and no mark-up begins or changes there.
create function keep_closed_prices() returns trigger language plpgsql as $$
begin
  perform pg_advisory_xact_lock_shared(hashtextextended('closing ' || current_tenant()::text, 0));
  if exists (
    select 1 from written w
      join period_close c on c.tenant_id = w.tenant_id and w.valid_from <= c.until_day
     where not exists (select 1 from period_reopening r where r.tenant_id = c.tenant_id and r.close_id = c.id)) then
    raise exception 'the period is closed'
      using errcode = '23514', constraint = 'period_is_closed', table = tg_table_name;
  end if;
  return null;
end $$;
create trigger no_new_price_in_a_closed_period after insert on price referencing new table as written
  for each statement execute function keep_closed_prices();
create trigger no_other_price_in_a_closed_period after update on price referencing new table as written
  for each statement execute function keep_closed_prices();
create trigger no_price_less_in_a_closed_period after delete on price referencing old table as written
  for each statement execute function keep_closed_prices();
create trigger no_new_mark_up_in_a_closed_period after insert on mark_up referencing new table as written
  for each statement execute function keep_closed_prices();
create trigger no_other_mark_up_in_a_closed_period after update on mark_up referencing new table as written
  for each statement execute function keep_closed_prices();
create trigger no_mark_up_less_in_a_closed_period after delete on mark_up referencing old table as written
  for each statement execute function keep_closed_prices();
