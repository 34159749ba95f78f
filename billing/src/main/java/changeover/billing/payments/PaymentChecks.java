package changeover.billing.payments;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;

/** What must hold of payments: none pays more documents than it brought, nor a document of another customer. */
public final class PaymentChecks {

    private static final String PAYMENTS = """
            with used as (
              select a.tenant_id, a.payment_id, sum(a.amount_minor) as minor,
                     bool_or(i.customer_id <> p.customer_id) as strange
                from payment_allocation a
                join payment p on p.tenant_id = a.tenant_id and p.id = a.payment_id
                join invoice i on i.tenant_id = a.tenant_id and i.id = a.invoice_id
               group by 1, 2)
            select count(*), count(*) filter (where u.minor > p.amount_minor or u.strange or (
                     p.kind = 'refund' and u.minor is not null))
              from payment p left join used u on u.tenant_id = p.tenant_id and u.payment_id = p.id""";

    private PaymentChecks() {}

    /** @param bad how many do not hold; nought is well */
    public record Found(String name, long rows, long bad) {}

    public static Found of(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(PAYMENTS)) {
            row.next();
            return new Found("payments", row.getLong(1), row.getLong(2));
        }
    }
}
