package changeover.deploy.admin;

import java.util.List;

/**
 * What was promised: homes that somebody answers for, agreements whose year was planned and whose price was written down to
 * the cent. What a person then changed, took off or discarded is deliberately not billed: the check counts what was
 * reckoned.
 */
final class PromiseInvariants {
    static final List<Invariant> ALL = List.of(
            new Invariant("equipment-owned", "equipment", """
                    select count(*), count(*) filter (where (home_id is null) = (building_id is null)) from equipment"""),
            new Invariant("homes-answered-for", "home_part", """
                    select count(*), count(*) filter (where not exists (
                        select 1 from home_part p where p.tenant_id = h.tenant_id and p.home_id = h.id and p.part = 'pays'))
                      from home h"""),
            new Invariant("agreements-planned", "year_planned", """
                    select count(*), count(*) filter (where y.id is null or y.visits <> (
                        select count(*) from visit v
                         where v.tenant_id = a.tenant_id and v.agreement_id = a.agreement_id and v.kind = 'plan'))
                      from agreement_acceptance a
                      left join year_planned y on y.tenant_id = a.tenant_id and y.agreement_id = a.agreement_id"""),
            new Invariant("plan-price-billed", "invoice", """
                    select count(*), count(*) filter (where priced <> billed) from (
                      select a.tenant_id, a.payer_id, sum(coalesce(o.asked_minor, a.price_minor)) as priced, coalesce((
                        select sum(case when l.by_hand then l.reckoned_minor else l.net_minor end) from invoice i
                          join invoice_line l on l.tenant_id = i.tenant_id and l.invoice_id = i.id
                         where i.tenant_id = a.tenant_id and i.customer_id = a.payer_id and i.kind = 'plan'), 0)
                      + coalesce((
                        select sum(t.reckoned_minor) from invoice i
                          join line_taken_off t on t.tenant_id = i.tenant_id and t.invoice_id = i.id
                         where i.tenant_id = a.tenant_id and i.customer_id = a.payer_id and i.kind = 'plan'), 0) as billed
                        from agreement a
                        join agreement_acceptance y on y.tenant_id = a.tenant_id and y.agreement_id = a.id
                        left join agreement_taken_over o on o.tenant_id = a.tenant_id and o.agreement_id = a.id
                       group by a.tenant_id, a.payer_id
                      having not exists (
                        select 1 from agreement e join agreement_ending n on n.tenant_id = e.tenant_id and n.agreement_id = e.id
                         where e.tenant_id = a.tenant_id and e.payer_id = a.payer_id)
                        and not exists (select 1 from agreement_takeover t where t.tenant_id = a.tenant_id
                          and a.payer_id in (t.was_payer_id, t.customer_id))) payer"""),
            new Invariant("terms-apart", "agreement_acceptance", """
                    select count(*), count(*) filter (where exists (
                        select 1 from agreement b join agreement_acceptance yb
                            on yb.tenant_id = b.tenant_id and yb.agreement_id = b.id
                         where b.tenant_id = a.tenant_id and b.renews_id = a.id and b.term_from < a.term_until))
                      from agreement a
                      join agreement_acceptance y on y.tenant_id = a.tenant_id and y.agreement_id = a.id"""));

    private PromiseInvariants() {}
}
