package changeover.billing.ledger;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;

/**
 * What must hold of the reports for the accountant, whatever happened to the machine. Reads with whatever rights the
 * connection has: the owner sees all businesses, the application the one it works for.
 */
public final class LedgerChecks {

    /** The report of all days says of each document what its head says; no more of a tax is paid than is kept of it. */
    private static final String TAXES = TaxMoves.SQL + """
            , said as (
              select invoice_id, sum(tax) filter (where what <> 'paid') as charged, sum(tax) filter (where what = 'paid') as paid
                from moves group by invoice_id)
            select count(*), count(*) filter (where coalesce(r.charged, 0) <> s.tax_minor
                     or coalesce(r.paid, 0) not between 0 and s.tax_minor - (
                       select coalesce(sum(c.tax_minor), 0) from invoice_issue c
                        where c.tenant_id = s.tenant_id and c.credits_id = s.invoice_id))
              from invoice_issue s left join said r on r.invoice_id = s.invoice_id""";

    private LedgerChecks() {}

    /** @param bad how many do not hold; nought is well */
    public record Found(String name, long rows, long bad) {}

    public static Found taxes(Connection connection) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement(TAXES)) {
            select.setObject(1, LocalDate.of(1, 1, 1));
            select.setObject(2, LocalDate.of(9999, 12, 31));
            ResultSet row = select.executeQuery();
            row.next();
            return new Found("taxes", row.getLong(1), row.getLong(2));
        }
    }
}
