select h.key as home, z.kind, z.note, z.language, z.seen_on, z.cleared_on
  from hazard z join home h on (h.tenant_id, h.id) = (z.tenant_id, z.home_id) order by h.key, z.seen_on, z.id
