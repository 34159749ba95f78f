select s.id as stop, h.key as home, q.name as unit, s.day, m.name as stopped_by, s.visit_id as visit, s.seen,
       s.sentence_code as sentence_en, s.sentence_code as sentence_fr, s.shut_off,
       coalesce(x.ticket, s.ticket) as ticket, s.place, t.only_heat, t.freezing, t.tonight, t.office_who as office_called,
       t.office_at as office_called_at, t.customer_who as customer_called, t.customer_at as customer_called_at, b.how as ended,
       b.day as ended_on, coalesce(w.name, r.name) as ended_by, b.ticket_kind as ended_with, b.ticket_number, b.ticket_until,
       b.done
  from machine_stop s join home h on (h.tenant_id, h.id) = (s.tenant_id, s.home_id)
  left join equipment q on (q.tenant_id, q.id) = (s.tenant_id, s.equipment_id)
  left join membership m on (m.tenant_id, m.person_id) = (s.tenant_id, s.person_id)
  left join back_in_service b on (b.tenant_id, b.stop_id) = (s.tenant_id, s.id)
  left join membership r on (r.tenant_id, r.person_id) = (b.tenant_id, b.person_id)
  left join partner w on (w.tenant_id, w.id) = (b.tenant_id, b.partner_id)
  left join lateral (select * from stop_heat l where (l.tenant_id, l.stop_id) = (s.tenant_id, s.id)
    order by l.at desc, l.id desc limit 1) t on true
  left join lateral (select * from stop_ticket c where (c.tenant_id, c.stop_id) = (s.tenant_id, s.id)
    order by c.at desc, c.id desc limit 1) x on true
 order by s.at, s.id
