-- Whoever goes along to an hour that was told goes for certain; their entries were written after the others had been marked.
update calendar_entry e set confirmed = true from hour_told t
 where e.goes_along and not e.confirmed and not e.cancelled
   and t.tenant_id = e.tenant_id and t.visit_id = e.visit_id and t.day = e.day and t.starts = e.starts;
