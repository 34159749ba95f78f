package changeover.billing.payments;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;

/**
 * What must hold of payments: none pays more than it brought, nor a document of another customer, and no document is paid twice. Sums are made once
 * each, even in a folder so new that the database has not counted its rows.
 */
public final class PaymentChecks {

    private static final String PAYMENTS = """
            with used as materialized (
              select a.tenant_id, a.payment_id, sum(a.amount_minor) as minor,
                     bool_or(i.customer_id <> p.customer_id) as strange
                from payment_allocation a
                join payment p on p.tenant_id = a.tenant_id and p.id = a.payment_id
                join invoice i on i.tenant_id = a.tenant_id and i.id = a.invoice_id
               group by 1, 2)
            select count(*), count(*) filter (where u.minor > p.amount_minor or u.strange or (
                     p.kind = 'refund' and u.minor is not null))
              from payment p left join used u on u.tenant_id = p.tenant_id and u.payment_id = p.id""";

    /**
     * No customer got back more than they had paid beyond what their payments pay; what was undone after it went back counts
     * as paid then.
     */
    private static final String REFUNDS = """
            with allocated as materialized (
              select tenant_id, payment_id, sum(amount_minor) as minor from payment_allocation group by 1, 2),
            moved as (
              select p.tenant_id, p.customer_id,
                     coalesce(sum(p.amount_minor) filter (where p.kind = 'payment'), 0) as taken,
                     coalesce(sum(p.amount_minor) filter (where p.kind = 'refund' and u.id is null), 0) as given,
                     coalesce(sum(a.minor) filter (where u.id is null), 0) as pays
                from payment p
                left join payment_undoing u on u.tenant_id = p.tenant_id and u.payment_id = p.id
                left join allocated a
                  on a.tenant_id = p.tenant_id and a.payment_id = p.id
               group by 1, 2)
            select count(*) filter (where given > 0), count(*) filter (where given > 0 and given + pays > taken)
              from moved""";

    /**
     * No document was paid beyond its total less what was credited. What a credit note set free may stand until it is used, and
     * so may what was paid ahead for a draft; after them no further money came to it.
     */
    private static final String DOCUMENTS = """
            with standing as materialized (
              select a.tenant_id, a.invoice_id, a.id, a.amount_minor as minor
                from payment_allocation a
                left join payment_undoing u on u.tenant_id = a.tenant_id and u.payment_id = a.payment_id
               where u.id is null),
            paid as materialized (
              select tenant_id, invoice_id, sum(minor) as minor from standing group by 1, 2),
            credited as materialized (
              select tenant_id, credits_id, sum(total_minor) as minor from invoice_issue where kind = 'credit' group by 1, 2)
            select count(*), count(*) filter (where p.minor > s.total_minor - coalesce(c.minor, 0) and exists (
                     select 1 from standing a
                      where a.tenant_id = s.tenant_id and a.invoice_id = s.invoice_id and a.minor > 0 and a.id > s.id
                        and not exists (
                          select 1 from invoice_issue n
                           where n.tenant_id = s.tenant_id and n.credits_id = s.invoice_id and n.id > a.id)))
              from paid p
              join invoice_issue s on s.tenant_id = p.tenant_id and s.invoice_id = p.invoice_id
              left join credited c on c.tenant_id = s.tenant_id and c.credits_id = s.invoice_id""";

    private PaymentChecks() {}

    /** @param bad how many do not hold; nought is well */
    public record Found(String name, long rows, long bad) {}

    public static Found of(Connection connection) throws SQLException {
        return counted(connection, "payments", PAYMENTS);
    }

    /** The rows are the customers who got something back. */
    public static Found refunds(Connection connection) throws SQLException {
        return counted(connection, "refunds", REFUNDS);
    }

    /** The rows are the issued documents that something pays. */
    public static Found documents(Connection connection) throws SQLException {
        return counted(connection, "paid", DOCUMENTS);
    }

    private static Found counted(Connection connection, String name, String sql) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(sql)) {
            row.next();
            return new Found(name, row.getLong(1), row.getLong(2));
        }
    }
}
