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
            new Invariant("credits-within", "invoice_issue", """
                    select count(*), count(*) filter (where credited > total_minor)
                      from (select s.total_minor, sum(c.total_minor) as credited
                              from invoice_issue s join invoice_issue c
                                on c.tenant_id = s.tenant_id and c.credits_id = s.invoice_id
                             group by s.tenant_id, s.id, s.total_minor) x"""),
            new Invariant("payments-spread-once", "payment_allocation", """
                    select count(*), count(*) filter (where spread > amount_minor + rounding_minor)
                      from (select p.amount_minor, p.rounding_minor, coalesce(sum(a.amount_minor), 0) as spread
                              from payment p
                              left join payment_allocation a on a.tenant_id = p.tenant_id and a.payment_id = p.id
                             group by p.tenant_id, p.id, p.amount_minor, p.rounding_minor) x"""),
            new Invariant("ledger", "ledger_posting", """
                    select count(*), count(*) filter (where total <> 0)
                      from (select sum(amount_minor) as total from ledger_posting group by tenant_id, entry_id) e"""));

    private OwedInvariants() {}
}
