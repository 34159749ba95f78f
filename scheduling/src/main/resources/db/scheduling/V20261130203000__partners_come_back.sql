-- Of those we work with each is known once; one that we left may be written down again, and brings their papers anew.
alter table partner drop constraint a_partner_is_known_once;
create index partner_by_name on partner (tenant_id, name, trade);

create function a_partner_is_known_once() returns trigger language plpgsql as $$
begin
  perform pg_advisory_xact_lock(hashtextextended('partner ' || new.tenant_id, 0));
  if exists (select 1 from partner p
              where p.tenant_id = new.tenant_id and p.name = new.name and p.trade = new.trade
                and not exists (select 1 from partner_end e where e.tenant_id = p.tenant_id and e.partner_id = p.id)) then
    raise exception 'known already' using errcode = 'unique_violation', constraint = 'a_partner_is_known_once', table = 'partner';
  end if;
  return new;
end $$;

create trigger a_partner_is_known_once before insert on partner
  for each row execute function a_partner_is_known_once();
