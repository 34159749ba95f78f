package changeover.billing.invoices;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.UUID;

/** A draft's head follows its lines: positions without gaps, the sum before tax, and one version more. */
final class DraftHead {

    /** Beyond every position that a document has. */
    private static final int ASIDE = 1_000_000;

    private DraftHead() {}

    /** Nobody else changes, issues or discards the draft until the transaction ends. */
    static void lock(Connection connection, UUID draft) throws SQLException {
        try (PreparedStatement lock = connection.prepareStatement("select 1 from invoice where id = ? for update")) {
            lock.setObject(1, draft);
            lock.executeQuery();
        }
    }

    static void follow(Connection connection, UUID draft) throws SQLException {
        closeGaps(connection, draft);
        try (PreparedStatement sum = connection.prepareStatement("""
                update invoice i set version = version + 1,
                       subtotal_minor = (select coalesce(sum(net_minor), 0) from invoice_line l
                                          where l.tenant_id = i.tenant_id and l.invoice_id = i.id)
                 where id = ?""")) {
            sum.setObject(1, draft);
            sum.executeUpdate();
        }
    }

    static int lastPosition(Connection connection, UUID draft) throws SQLException {
        try (PreparedStatement last = connection.prepareStatement(
                "select coalesce(max(position), 0) from invoice_line where invoice_id = ?")) {
            last.setObject(1, draft);
            ResultSet row = last.executeQuery();
            row.next();
            return row.getInt(1);
        }
    }

    private static void closeGaps(Connection connection, UUID draft) throws SQLException {
        try (PreparedStatement gap = connection.prepareStatement(
                        "select 1 from invoice_line where invoice_id = ? having max(position) > count(*)");
                PreparedStatement aside = connection.prepareStatement(
                        "update invoice_line set position = position + " + ASIDE + " where invoice_id = ?");
                PreparedStatement back = connection.prepareStatement("""
                        update invoice_line l set position = r.position
                          from (select id, row_number() over (order by position) as position
                                  from invoice_line where invoice_id = ?) r
                         where l.id = r.id""")) {
            gap.setObject(1, draft);
            if (gap.executeQuery().next()) {
                aside.setObject(1, draft);
                aside.executeUpdate();
                back.setObject(1, draft);
                back.executeUpdate();
            }
        }
    }
}
