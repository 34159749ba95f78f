package changeover.billing.invoices;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;

/**
 * What must hold of every issued document, whatever happened to the machine: numbers without gap or double, an unbroken
 * chain, lines and taxes that are the total, and no more given back than was charged.
 */
public final class InvoiceChecks {

    /** Every number from the first to the counter's last is there once, and none beyond. */
    private static final String NUMBERS = """
            with given as materialized (
              select tenant_id, series, count(*) as documents, count(distinct number) as numbers, min(number) as first,
                     max(number) as last from invoice_issue group by tenant_id, series)
            select coalesce(sum(g.documents), 0), coalesce(sum(
                     case when c.series is null then g.documents
                          when g.series is null then c.last_number - c.first_number + 1
                          else abs(c.last_number - c.first_number + 1 - g.numbers) + (g.documents - g.numbers)
                             + (g.first <> c.first_number)::int + (g.last <> c.last_number)::int end), 0)
              from number_counter c
              full join given g on g.tenant_id = c.tenant_id and g.series = c.series""";

    private static final String TOTALS = """
            with lines as materialized (
              select tenant_id, invoice_id, sum(net_minor) as minor from invoice_line group by 1, 2),
            taxes as materialized (
              select tenant_id, invoice_id, sum(amount_minor) as minor from invoice_tax group by 1, 2)
            select count(*), count(*) filter (where s.subtotal_minor <> coalesce(l.minor, 0)
                     or s.tax_minor <> coalesce(t.minor, 0) or s.total_minor <> s.subtotal_minor + s.tax_minor)
              from invoice_issue s
              left join lines l on l.tenant_id = s.tenant_id and l.invoice_id = s.invoice_id
              left join taxes t on t.tenant_id = s.tenant_id and t.invoice_id = s.invoice_id""";

    private static final String CREDITS = """
            with back as materialized (
              select tenant_id, credits_id, sum(subtotal_minor) as subtotal, sum(tax_minor) as tax
                from invoice_issue where kind = 'credit' group by 1, 2)
            select count(*), count(*) filter (
                     where s.id is null or b.subtotal > s.subtotal_minor or b.tax > s.tax_minor)
              from back b
              left join invoice_issue s on s.tenant_id = b.tenant_id and s.invoice_id = b.credits_id""";

    private InvoiceChecks() {}

    /** @param bad how many do not hold; nought is well */
    public record Found(String name, long rows, long bad) {}

    public static List<Found> all(Connection connection) throws SQLException {
        List<Found> found = new ArrayList<>();
        found.add(counted(connection, "numbers", NUMBERS));
        ChainCheck.Outcome chain = ChainCheck.of(connection);
        found.add(new Found("chain", chain.documents(), chain.broken().size()));
        found.add(counted(connection, "totals", TOTALS));
        found.add(counted(connection, "credits", CREDITS));
        return found;
    }

    private static Found counted(Connection connection, String name, String sql) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(sql)) {
            row.next();
            return new Found(name, row.getLong(1), row.getLong(2));
        }
    }
}
