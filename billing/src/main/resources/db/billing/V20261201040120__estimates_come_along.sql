-- What was offered stands as it was offered; only its home may be the one into which it was merged, or out of which it came again.
create or replace function keep_offered_estimate() returns trigger language plpgsql as $$
declare
  named uuid := case when tg_table_name = 'estimate' then to_jsonb(old) ->> 'id'
                     else coalesce(to_jsonb(new), to_jsonb(old)) ->> 'estimate_id' end;
  tenant uuid := coalesce(to_jsonb(new), to_jsonb(old)) ->> 'tenant_id';
begin
  if tg_table_name = 'estimate' and tg_op = 'UPDATE'
      and to_jsonb(new) - 'home_id' = to_jsonb(old) - 'home_id'
      and exists (select 1 from home_merge m where m.tenant_id = tenant
                   and m.home_id in ((to_jsonb(old) ->> 'home_id')::uuid, (to_jsonb(new) ->> 'home_id')::uuid)
                   and m.other_id in ((to_jsonb(old) ->> 'home_id')::uuid, (to_jsonb(new) ->> 'home_id')::uuid)) then
    return new;
  end if;
  if exists (select 1 from estimate_offer o where o.tenant_id = tenant and o.estimate_id = named)
      or exists (select 1 from estimate_answer a where a.tenant_id = tenant and a.estimate_id = named) then
    raise exception 'an offered estimate never changes'
      using errcode = '23514', constraint = 'an_offered_estimate_stands', table = tg_table_name;
  end if;
  return coalesce(new, old);
end $$;
