select f.visit_id as visit, h.key as home, q.name as unit, f.level, f.text, f.sentence_code as sentence_en,
       f.sentence_code as sentence_fr, f.told_to, f.answer, f.day, f.cleared_on, f.cleared_why
  from finding f join home h on (h.tenant_id, h.id) = (f.tenant_id, f.home_id)
  left join equipment q on (q.tenant_id, q.id) = (f.tenant_id, f.equipment_id)
 order by f.day, h.key
