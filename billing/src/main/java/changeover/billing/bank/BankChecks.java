package changeover.billing.bank;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;

/** What must hold of the bank's lines: what is booked from one is what it brought, and no payment is booked from two. */
public final class BankChecks {

    private static final String LINES = """
            with used as (
              select u.tenant_id, u.line_id, sum(p.amount_minor + p.rounding_minor) as minor
                from bank_line_use u
                join payment p on p.tenant_id = u.tenant_id and p.id = u.payment_id
                left join payment_undoing x on x.tenant_id = u.tenant_id and x.payment_id = u.payment_id
               where u.how <> 'returned' and (x.id is null or x.how = 'bounced') group by 1, 2),
            twice as (
              select u.tenant_id, u.line_id from bank_line_use u where u.how <> 'returned' and exists (
                select 1 from bank_line_use o where o.tenant_id = u.tenant_id and o.payment_id = u.payment_id
                   and o.how <> 'returned' and o.line_id <> u.line_id))
            select count(*), count(*) filter (where u.minor <> l.amount_minor
                     or exists (select 1 from twice t where t.tenant_id = l.tenant_id and t.line_id = l.id)
                     or (u.line_id is not null and d.id is not null))
              from bank_line l
              left join used u on u.tenant_id = l.tenant_id and u.line_id = l.id
              left join bank_line_dismissal d on d.tenant_id = l.tenant_id and d.line_id = l.id""";

    private BankChecks() {}

    /** @param bad how many do not hold; nought is well */
    public record Found(String name, long rows, long bad) {}

    public static Found of(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(LINES)) {
            row.next();
            return new Found("bank-lines", row.getLong(1), row.getLong(2));
        }
    }
}
