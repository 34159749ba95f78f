-- A licensed partner put it back in service: who they are and by which paper; whoever writes it down is the person of the row.
alter table back_in_service add column partner_id uuid, add column paper_id uuid,
  add foreign key (tenant_id, partner_id) references partner (tenant_id, id),
  add foreign key (tenant_id, paper_id) references partner_paper (tenant_id, id),
  add constraint a_partner_puts_back_by_a_paper check ((partner_id is null) = (paper_id is null));
create index back_in_service_by_a_partner on back_in_service (tenant_id, partner_id) where partner_id is not null;

-- The ticket that the stop asks for now, as it was corrected last: held by whoever says so, or the partner's licence in that trade.
create or replace function a_stop_ends_with_its_ticket() returns trigger language plpgsql as $$
begin
  if not exists (
    select from machine_stop s
      left join lateral (
        select c.ticket from stop_ticket c where c.tenant_id = s.tenant_id and c.stop_id = s.id
         order by c.at desc, c.id desc limit 1) c on true
     where s.tenant_id = new.tenant_id and s.id = new.stop_id and coalesce(c.ticket, s.ticket) = new.ticket_kind
       and case when new.partner_id is null then exists (
             select from ticket t
              where t.tenant_id = s.tenant_id and t.kind = new.ticket_kind and t.person_id = new.person_id
                and (t.expires_on is null or t.expires_on >= new.day))
           else new.day >= s.day and exists (
             select from partner p
               join partner_paper q on q.tenant_id = p.tenant_id and q.partner_id = p.id and q.kind = 'licence'
              where p.tenant_id = s.tenant_id and p.id = new.partner_id and q.id = new.paper_id and q.expires_on >= new.day
                and new.ticket_kind = case p.trade when 'refrigeration' then 'refrigerant' else p.trade end) end) then
    raise exception 'no ticket for it' using errcode = '23514', constraint = 'a_stop_ends_with_its_ticket';
  end if;
  return new;
end $$;
