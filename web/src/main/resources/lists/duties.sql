select s.id as stop, h.key as home, q.name as unit, coalesce(o.words, d.code) as duty, o.due, o.source, d.who, d.day as done_on,
       d.words
  from machine_stop s join home h on (h.tenant_id, h.id) = (s.tenant_id, s.home_id)
  left join equipment q on (q.tenant_id, q.id) = (s.tenant_id, s.equipment_id)
  join lateral (
    select o.id::text as code, o.at from stop_duty o where (o.tenant_id, o.stop_id) = (s.tenant_id, s.id)
    union select x.code, null from stop_duty_done x where (x.tenant_id, x.stop_id) = (s.tenant_id, s.id) and not exists (
      select from stop_duty y where (y.tenant_id, y.stop_id) = (x.tenant_id, x.stop_id) and y.id::text = x.code)) k on true
  left join stop_duty o on (o.tenant_id, o.stop_id) = (s.tenant_id, s.id) and o.id::text = k.code
  left join stop_duty_done d on (d.tenant_id, d.stop_id) = (s.tenant_id, s.id) and d.code = k.code
 order by s.at, s.id, coalesce(o.due, d.day), k.code
