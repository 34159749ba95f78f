select h.key as home, s.from_day as "from", s.until_day - 1 as last, s.heat_off, s.water_drained, s.note
  from home_shut s join home h on (h.tenant_id, h.id) = (s.tenant_id, s.home_id) order by h.key, s.from_day
