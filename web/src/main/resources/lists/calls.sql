select h.key as home, coalesce(x.caller, c.caller) as caller,
       case when x.id is null then c.phone else x.phone end as phone, c.rang_at,
       coalesce(x.trouble, c.trouble) as trouble, coalesce(x.words, c.words) as words,
       coalesce(x.heat, c.heat) as heat, array_to_string(coalesce(x.risks, c.risks), ' ') as risks,
       coalesce(x.promised_by, c.promised_by) as promised_by, o.how as became, o.why, o.at as answered_at,
       o.visit_id as visit
  from call c join home h on (h.tenant_id, h.id) = (c.tenant_id, c.home_id)
  left join call_outcome o on (o.tenant_id, o.call_id) = (c.tenant_id, c.id)
  left join lateral (select * from call_correction r where (r.tenant_id, r.call_id) = (c.tenant_id, c.id)
    order by r.id desc limit 1) x on true order by c.rang_at
