select f.visit_id as visit, h.key as home, f.kind, f.opened_on, f.ended_on, f.ended_why, f.became_id as became
  from follow_up f join home h on (h.tenant_id, h.id) = (f.tenant_id, f.home_id) order by f.opened_on, f.id
