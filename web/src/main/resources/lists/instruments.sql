select i.name, i.serial, c.day as calibrated_on, c.until_day as calibrated_until, m.name as carried_by, e.day as put_away_on
  from instrument i left join instrument_end e on (e.tenant_id, e.instrument_id) = (i.tenant_id, i.id)
  left join instrument_calibration c on (c.tenant_id, c.instrument_id) = (i.tenant_id, i.id)
  left join lateral (select * from instrument_holder x where (x.tenant_id, x.instrument_id) = (i.tenant_id, i.id)
    order by x.day desc, x.id desc limit 1) o on true
  left join membership m on (m.tenant_id, m.person_id) = (o.tenant_id, o.person_id)
 order by i.name, i.serial, c.day
