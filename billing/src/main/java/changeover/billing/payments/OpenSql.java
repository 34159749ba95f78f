package changeover.billing.payments;

/**
 * Issued invoices with what is still to be paid of each at the end of a day, which is given {@link #DAYS} times. Both answer the
 * same rows; what differs is what the database reads for them.
 */
final class OpenSql {

    /** How often the day is asked for. */
    static final int DAYS = 6;

    private static final String PAID = """
            select %s sum(a.amount_minor)::bigint as minor
              from payment_allocation a
              join payment p on p.tenant_id = a.tenant_id and p.id = a.payment_id and p.day <= ?::date
              left join payment_undoing u
                on u.tenant_id = p.tenant_id and u.payment_id = p.id and u.day <= ?::date
             where a.day <= ?::date and u.id is null %s""";

    private static final String CREDITED = """
            select %s sum(c.total_minor)::bigint as minor
              from invoice_issue c where c.kind = 'credit' and c.day <= ?::date %s""";

    private static final String GIVEN_UP = """
            select %s sum(w.amount_minor)::bigint as minor from write_off w where w.day <= ?::date %s""";

    private static final String ITEM = """
            item as (
              select s.invoice_id, s.customer_id, s.label, s.day, s.due_day, s.series, s.number, s.total_minor,
                     coalesce(c.minor, 0) as credited_minor, coalesce(p.minor, 0) as paid_minor,
                     coalesce(g.minor, 0) as given_up_minor,
                     greatest(0, s.total_minor - coalesce(c.minor, 0) - coalesce(p.minor, 0) - coalesce(g.minor, 0))
                       as open_minor
                from invoice_issue s
                left join %s p on %s
                left join %s c on %s
                left join %s g on %s
               where s.kind <> 'credit' and s.day <= ?::date)
            """;

    /** For sums and lists of the whole business: every payment is read once. */
    static final String OPEN = """
            with paid as (%s),
            credited as (%s),
            given_up as (%s),
            """.formatted(
                            PAID.formatted("a.invoice_id,", "group by a.invoice_id"),
                            CREDITED.formatted("c.credits_id as invoice_id,", "group by c.credits_id"),
                            GIVEN_UP.formatted("w.invoice_id,", "group by w.invoice_id"))
            + ITEM.formatted(
                    "paid", "p.invoice_id = s.invoice_id",
                    "credited", "c.invoice_id = s.invoice_id",
                    "given_up", "g.invoice_id = s.invoice_id");

    /** For the documents of one customer or a few homes: what belongs to each document is looked up by its index. */
    static final String OPEN_OF_FEW = "with "
            + ITEM.formatted(
                    "lateral (" + PAID.formatted("", "and a.tenant_id = s.tenant_id and a.invoice_id = s.invoice_id")
                                    + ")",
                            "true",
                    "lateral ("
                                    + CREDITED.formatted(
                                            "", "and c.tenant_id = s.tenant_id and c.credits_id = s.invoice_id")
                                    + ")",
                            "true",
                    "lateral ("
                                    + GIVEN_UP.formatted(
                                            "", "and w.tenant_id = s.tenant_id and w.invoice_id = s.invoice_id")
                                    + ")",
                            "true");

    private OpenSql() {}
}
