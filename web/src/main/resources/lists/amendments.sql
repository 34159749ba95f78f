select a.visit_id as visit, h.key as home, a.version, a.why, m.name as amended_by, a.at, a.changes::text as changes
  from amendment a join visit v on (v.tenant_id, v.id) = (a.tenant_id, a.visit_id)
  join home h on (h.tenant_id, h.id) = (v.tenant_id, v.home_id)
  left join membership m on (m.tenant_id, m.person_id) = (a.tenant_id, a.person_id)
 order by a.at, a.id
