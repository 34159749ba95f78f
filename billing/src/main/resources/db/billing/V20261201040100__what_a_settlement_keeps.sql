-- An ended agreement is settled on a day: what is kept is earned by then. The last one counts.
create table settlement (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  agreement_id uuid not null,
  day date not null,
  way text constraint a_known_way_of_settling check (way in ('pro-rata', 'work-done', 'pro-rata-less-work')),
  kept_minor bigint not null constraint a_settlement_keeps_nothing_below_nought check (kept_minor >= 0),
  why text not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, agreement_id) references agreement (tenant_id, id)
);
call owned('settlement');
create index settlement_of on settlement (tenant_id, agreement_id);
revoke update, delete on settlement from ${app};

-- What was settled before by a credit note or by less of an instalment keeps what is asked for now; its way was not written down.
insert into settlement (tenant_id, agreement_id, day, kept_minor, why)
select e.tenant_id, e.agreement_id, d.day, greatest(0, k.minor), e.why
  from agreement_ending e
  join lateral (
    select min(m.day) as day
      from (select coalesce(s.day, i.made_at::date) as day
              from invoice_line l
              join invoice i on i.tenant_id = l.tenant_id and i.id = l.invoice_id and i.kind = 'credit'
              left join invoice_issue s on s.tenant_id = i.tenant_id and s.invoice_id = i.id
              left join invoice_discard x on x.tenant_id = i.tenant_id and x.invoice_id = i.id
             where l.tenant_id = e.tenant_id and l.agreement_id = e.agreement_id and l.kind = 'plan' and x.id is null
            union all
            select x.day
              from instalment_lessening x join invoice i on i.tenant_id = x.tenant_id and i.id = x.invoice_id
             where i.tenant_id = e.tenant_id and i.agreement_id = e.agreement_id) m
     where m.day >= e.day) d on d.day is not null
  join lateral (
    select coalesce(sum(case i.kind when 'credit' then -l.net_minor else l.net_minor end), 0) as minor
      from invoice_line l
      join invoice i on i.tenant_id = l.tenant_id and i.id = l.invoice_id
      left join invoice_discard x on x.tenant_id = i.tenant_id and x.invoice_id = i.id
     where l.tenant_id = e.tenant_id and l.agreement_id = e.agreement_id and l.kind = 'plan' and x.id is null) k on true;
