package changeover.deploy.admin;

import java.util.List;

/** What must not be used is stopped, and never back without the ticket of whoever put it back, one of us or a licensed partner. */
final class StopInvariants {
    static final List<Invariant> ALL = List.of(
            new Invariant("do-not-use", "machine_stop", """
                    select count(*), count(*) filter (where
                        (b.id is not null and (b.ticket_kind <> coalesce(c.ticket, s.ticket) or b.ticket_until < b.day or b.day < s.day
                          or (b.partner_id is not null and not exists (select 1 from partner p
                              join partner_paper q on q.tenant_id = p.tenant_id and q.partner_id = p.id
                             where p.tenant_id = b.tenant_id and p.id = b.partner_id and q.id = b.paper_id and q.kind = 'licence'
                               and q.expires_on >= b.day
                               and b.ticket_kind = case p.trade when 'refrigeration' then 'refrigerant' else p.trade end))))
                        or (f.cleared_on is not null and b.id is null)
                        or (h.only_heat and h.freezing and (h.tonight is null or h.office_who is null or h.customer_who is null)))
                      from machine_stop s
                      left join back_in_service b on b.tenant_id = s.tenant_id and b.stop_id = s.id
                      left join finding f on f.tenant_id = s.tenant_id and f.id = s.finding_id
                      left join lateral (select x.ticket from stop_ticket x where x.tenant_id = s.tenant_id and x.stop_id = s.id
                         order by x.at desc, x.id desc limit 1) c on true
                      left join lateral (select x.* from stop_heat x where x.tenant_id = s.tenant_id and x.stop_id = s.id
                         order by x.at desc, x.id desc limit 1) h on true"""), new Invariant("do-not-use-stops", "finding", """
                    select count(*), count(*) filter (where s.id is null)
                      from finding f
                      left join machine_stop s on s.tenant_id = f.tenant_id and s.finding_id = f.id
                     where f.level = 'do_not_use' and f.cleared_on is null"""));

    private StopInvariants() {}
}
