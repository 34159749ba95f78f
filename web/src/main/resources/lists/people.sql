select m.name, m.email, m.phone, m.language, m.role, m.asked_on, m.joined_on, m.until_day - 1 as last, t.kind as ticket,
       t.number as ticket_number, t.expires_on as ticket_until
  from membership m left join ticket t on (t.tenant_id, t.person_id) = (m.tenant_id, m.person_id)
 order by m.name, m.id, t.kind
