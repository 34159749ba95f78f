package changeover.billing.invoices;

import changeover.contracts.money.Money;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Collection;
import java.util.Currency;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;

/** What was paid of a document before it was issued is written down at that moment and stands on its paper for ever. */
public final class PaidBefore {

    private static final String SO_FAR = """
            select a.invoice_id, sum(a.amount_minor) as minor
              from payment_allocation a
              left join payment_undoing u on u.tenant_id = a.tenant_id and u.payment_id = a.payment_id
             where a.invoice_id = any (?) and u.id is null
             group by a.invoice_id having sum(a.amount_minor) > 0""";

    private PaidBefore() {}

    /** Of documents that are being issued: never more than their total. */
    public static void write(Connection connection, Collection<UUID> issued) throws SQLException {
        try (PreparedStatement insert = connection.prepareStatement("""
                insert into paid_before (invoice_id, amount_minor)
                select s.invoice_id, least(p.minor, s.total_minor)
                  from (""" + SO_FAR + """
                       ) p join invoice_issue s on s.invoice_id = p.invoice_id
                 where s.kind <> 'credit' and s.total_minor > 0""")) {
            insert.setArray(1, connection.createArrayOf("uuid", issued.toArray()));
            insert.executeUpdate();
        }
    }

    /** Of issued documents; those of which nothing was paid before are missing. */
    public static Map<UUID, Money> of(Connection connection, Collection<UUID> issued, Currency currency)
            throws SQLException {
        return read(
                connection,
                "select invoice_id, amount_minor from paid_before where invoice_id = any (?)",
                issued,
                currency);
    }

    /** Of drafts, as they stand. */
    static Map<UUID, Money> soFar(Connection connection, Collection<UUID> drafts, Currency currency)
            throws SQLException {
        return read(connection, SO_FAR, drafts, currency);
    }

    private static Map<UUID, Money> read(Connection connection, String sql, Collection<UUID> ids, Currency currency)
            throws SQLException {
        Map<UUID, Money> paid = new HashMap<>();
        try (PreparedStatement select = connection.prepareStatement(sql)) {
            select.setArray(1, connection.createArrayOf("uuid", ids.toArray()));
            ResultSet row = select.executeQuery();
            while (row.next()) {
                paid.put(row.getObject(1, UUID.class), new Money(row.getLong(2), currency));
            }
        }
        return paid;
    }
}
