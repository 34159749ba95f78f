package changeover.deploy.admin;

import java.util.List;

/**
 * What is owed: numbers without gaps, documents that add up, money that is spread once. The chain of hashes is computed anew
 * by {@link changeover.billing.invoices.ChainCheck}, and a credit note's taxes by the cumulative method need not be the
 * rounded rate.
 */
final class OwedInvariants {
    static final List<Invariant> ALL = List.of(
            new Invariant("numbers", "number_counter", """
                    select coalesce(sum(n), 0)::bigint, count(*) filter (where n <> last_number - first_number + 1
                        or (n > 0 and (first <> first_number or last <> last_number)))
                      from (select c.first_number, c.last_number, count(i.id) as n, min(i.number) as first, max(i.number) as last
                              from number_counter c
                              full join invoice_issue i on i.tenant_id = c.tenant_id and i.series = c.series
                             group by coalesce(c.tenant_id, i.tenant_id), coalesce(c.series, i.series), c.first_number, c.last_number) s"""),
            new Invariant("totals", "invoice_issue", """
                    select count(*), count(*) filter (where
                        s.subtotal_minor <> (select coalesce(sum(net_minor), 0) from invoice_line l
                                              where l.tenant_id = s.tenant_id and l.invoice_id = s.invoice_id)
                        or s.tax_minor <> (select coalesce(sum(amount_minor), 0) from invoice_tax t
                                            where t.tenant_id = s.tenant_id and t.invoice_id = s.invoice_id)
                        or s.total_minor <> s.subtotal_minor + s.tax_minor)
                      from invoice_issue s"""),
            new Invariant("drafts-add-up", "invoice", """
                    select count(*), count(*) filter (where i.subtotal_minor <> (
                        select coalesce(sum(net_minor), 0) from invoice_line l
                         where l.tenant_id = i.tenant_id and l.invoice_id = i.id))
                      from invoice i"""),
            new Invariant("taxes-rounded", "invoice_tax", """
                    select count(*), count(*) filter (where amount_minor <> round(base_minor * percent / 100))
                      from invoice_tax t join invoice i
                        on i.tenant_id = t.tenant_id and i.id = t.invoice_id and i.kind <> 'credit'"""),
            new Invariant("closed-doors", "invoice_line", """
                    select count(*), count(*) filter (where e.how is distinct from 'no_access' or asked.times > 1)
                      from (select l.tenant_id, l.visit_id, count(*) as times from invoice_line l
                              join invoice i on i.tenant_id = l.tenant_id and i.id = l.invoice_id and i.kind = 'visit'
                             where l.kind = 'travel' and l.item_code = 'no-access' and not l.by_hand group by 1, 2) asked
                      left join visit_ending e on e.tenant_id = asked.tenant_id and e.visit_id = asked.visit_id"""),
            new Invariant("credits-within", "invoice_issue", """
                    select count(*), count(*) filter (where credited > total_minor)
                      from (select s.total_minor, sum(c.total_minor) as credited
                              from invoice_issue s join invoice_issue c
                                on c.tenant_id = s.tenant_id and c.credits_id = s.invoice_id
                             group by s.tenant_id, s.id, s.total_minor) x"""),
            new Invariant("payments-spread-once", "payment_allocation", """
                    select count(*), count(*) filter (where spread > amount_minor)
                      from (select p.amount_minor, coalesce(sum(a.amount_minor), 0) as spread
                              from payment p
                              left join payment_allocation a on a.tenant_id = p.tenant_id and a.payment_id = p.id
                             group by p.tenant_id, p.id, p.amount_minor) x"""),
            new Invariant("write-offs", "write_off", """
                    with given as (
                      select w.tenant_id, w.invoice_id, sum(w.amount_minor) as minor from write_off w group by 1, 2),
                    rest as (
                      select g.*, s.total_minor - coalesce((select sum(c.total_minor) from invoice_issue c
                               where c.tenant_id = g.tenant_id and c.credits_id = g.invoice_id), 0) as total,
                             coalesce((select sum(a.amount_minor) from payment_allocation a
                               where a.tenant_id = g.tenant_id and a.invoice_id = g.invoice_id and not exists (
                                 select 1 from payment_undoing u
                                  where u.tenant_id = a.tenant_id and u.payment_id = a.payment_id)), 0) as paid,
                             (select coalesce(sum(x.amount_minor), 0) from write_off_tax x join write_off w
                                 on w.tenant_id = x.tenant_id and w.id = x.write_off_id
                               where w.tenant_id = g.tenant_id and w.invoice_id = g.invoice_id) as tax,
                             s.tax_minor - coalesce((select sum(c.tax_minor) from invoice_issue c
                               where c.tenant_id = g.tenant_id and c.credits_id = g.invoice_id), 0) as taxed
                        from given g join invoice_issue s on s.tenant_id = g.tenant_id and s.invoice_id = g.invoice_id)
                    select count(*), count(*) filter (where minor not between 0 and greatest(0, total - paid)
                        or tax not between 0 and taxed or (minor = 0 and tax <> 0) or (minor = total and tax <> taxed))
                      from rest"""),
            new Invariant("deposits", "deposit", """
                    select count(*), count(*) filter (where applied < 0 or back < 0 or applied + back > amount_minor or strange)
                      from (select p.amount_minor,
                                   coalesce((select sum(a.amount_minor) from payment_allocation a
                                     where a.tenant_id = d.tenant_id and a.payment_id = d.payment_id), 0) as applied,
                                   coalesce((select sum(r.amount_minor) from deposit_return b join payment r
                                        on r.tenant_id = b.tenant_id and r.id = b.refund_id
                                     where b.tenant_id = d.tenant_id and b.deposit_id = d.id and not exists (
                                       select 1 from payment_undoing u
                                        where u.tenant_id = r.tenant_id and u.payment_id = r.id)), 0) as back,
                                   p.kind <> 'payment' or exists (select 1 from deposit_return b join payment r
                                        on r.tenant_id = b.tenant_id and r.id = b.refund_id
                                     where b.tenant_id = d.tenant_id and b.deposit_id = d.id
                                       and (r.kind <> 'refund' or r.customer_id <> p.customer_id)) as strange
                              from deposit d join payment p on p.tenant_id = d.tenant_id and p.id = d.payment_id) x"""),
            new Invariant("deposit-receipts", "deposit", """
                    select coalesce(sum(n), 0), count(*) filter (where n <> last or first <> 1)
                      from (select count(*) as n, min(number) as first, max(number) as last
                              from deposit group by tenant_id) d"""),
            new Invariant("deposit-refunds", "deposit_return", """
                    select count(*), count(*) filter (where d.id is null or exists (
                        select 1 from payment_allocation a where a.tenant_id = b.tenant_id and a.payment_id = b.refund_id))
                      from deposit_return b
                      left join deposit d on d.tenant_id = b.tenant_id and d.id = b.deposit_id"""));

    private OwedInvariants() {}
}
