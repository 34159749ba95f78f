package changeover.billing.ledger;

/**
 * Every movement of a tax in a period, by document, as SQL: what invoices charged, what credit notes gave back, what of a
 * document was paid, and what was given up with a debt.
 *
 * <p>Of a document that is paid in part, each tax is paid in the same part, half-up; what stands paid at the end of the period
 * less what stood paid before it is the period's, so that periods add up to the cent. A credit note lessens the document, and a
 * payment that was undone counts until its undoing.
 */
final class TaxMoves {

    /** Begins with {@code with}; the two parameters are the first and the last day of the period. */
    static final String SQL = """
            with asked as (select ?::date as first, ?::date as last),
            mark as (select first - 1 as day, -1 as sign from asked union all select last, 1 from asked),
            charged as (
              select s.invoice_id, s.kind, s.credits_id, s.day, s.total_minor, t.region, t.code, t.percent, t.category,
                     max(t.label_en) as label_en, max(t.label_fr) as label_fr,
                     sum(t.base_minor) as base, sum(t.amount_minor) as tax
                from invoice_issue s
                join invoice_tax t on t.tenant_id = s.tenant_id and t.invoice_id = s.invoice_id
               group by s.invoice_id, s.kind, s.credits_id, s.day, s.total_minor, t.region, t.code, t.percent, t.category),
            paid as (
              select m.sign, m.day, a.invoice_id, sum(a.amount_minor) as minor
                from mark m
                join payment_allocation a on a.day <= m.day
                join payment p on p.tenant_id = a.tenant_id and p.id = a.payment_id and p.day <= m.day
                left join payment_undoing u
                  on u.tenant_id = p.tenant_id and u.payment_id = p.id and u.day <= m.day
               where u.id is null group by m.sign, m.day, a.invoice_id),
            credited as (
              select m.sign, s.credits_id as invoice_id, sum(s.total_minor) as minor
                from mark m join invoice_issue s on s.kind = 'credit' and s.day <= m.day
               group by m.sign, s.credits_id),
            back as (
              select m.sign, c.credits_id as invoice_id, c.region, c.code, c.percent, c.category, sum(c.base) as base,
                     sum(c.tax) as tax
                from mark m join charged c on c.kind = 'credit' and c.day <= m.day
               group by m.sign, c.credits_id, c.region, c.code, c.percent, c.category),
            kept as (
              select p.sign, d.invoice_id, d.region, d.code, d.percent, d.category, d.label_en, d.label_fr,
                     d.base - coalesce(b.base, 0) as base, d.tax - coalesce(b.tax, 0) as tax,
                     d.total_minor - coalesce(c.minor, 0) as total,
                     least(p.minor, d.total_minor - coalesce(c.minor, 0)) as paid
                from paid p
                join charged d on d.invoice_id = p.invoice_id and d.kind <> 'credit' and d.day <= p.day
                left join credited c on c.invoice_id = d.invoice_id and c.sign = p.sign
                left join back b on b.invoice_id = d.invoice_id and b.sign = p.sign and b.region = d.region
                 and b.code = d.code and b.percent = d.percent and b.category = d.category),
            moves as (
              select case kind when 'credit' then 'credited' else 'invoiced' end as what, invoice_id, region, code, percent,
                     category, label_en, label_fr, base, tax
                from charged, asked where day between first and last
              union all
              select 'given_up', t.invoice_id, t.region, t.code, t.percent, t.category, max(t.label_en), max(t.label_fr),
                     sum(x.base_minor), sum(x.amount_minor)
                from asked
                join write_off w on w.day between first and last
                join write_off_tax x on x.tenant_id = w.tenant_id and x.write_off_id = w.id
                join invoice_tax t on t.tenant_id = x.tenant_id and t.id = x.invoice_tax_id
               group by t.invoice_id, t.region, t.code, t.percent, t.category
              union all
              select 'paid', invoice_id, region, code, percent, category, label_en, label_fr,
                     sum(sign * round(base * paid / total)), sum(sign * round(tax * paid / total))
                from kept where total > 0
               group by invoice_id, region, code, percent, category, label_en, label_fr
              having sum(sign * round(base * paid / total)) <> 0 or sum(sign * round(tax * paid / total)) <> 0)
            """;

    private TaxMoves() {}
}
