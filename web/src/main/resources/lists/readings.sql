select r.visit_id as visit, h.key as home, q.name as unit, r.code, r.entered_value as entered,
       r.entered_unit, r.value, r.unit as value_unit, r.standing, r.day, r.instrument, r.instrument_until
  from reading r join home h on (h.tenant_id, h.id) = (r.tenant_id, r.home_id)
  left join equipment q on (q.tenant_id, q.id) = (r.tenant_id, r.equipment_id)
 order by r.day, r.visit_id, r.code
