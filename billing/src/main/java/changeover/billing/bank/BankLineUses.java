package changeover.billing.bank;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** The payments that a line of the bank is, one or several. */
final class BankLineUses {

    private BankLineUses() {}

    static void keep(Connection connection, UUID line, List<UUID> payments, String how, String why)
            throws SQLException {
        try (PreparedStatement insert = connection.prepareStatement("""
                insert into bank_line_use (line_id, payment_id, how, why)
                select ?, one, ?, ? from unnest(?::uuid[]) one""")) {
            insert.setObject(1, line);
            insert.setString(2, how);
            insert.setString(3, why);
            insert.setArray(4, connection.createArrayOf("uuid", payments.toArray()));
            insert.executeUpdate();
        }
    }

    /** How each payment was found. */
    static Map<UUID, String> of(Connection connection, UUID line) throws SQLException {
        Map<UUID, String> uses = new LinkedHashMap<>();
        try (PreparedStatement select =
                connection.prepareStatement("select payment_id, how from bank_line_use where line_id = ?")) {
            select.setObject(1, line);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                uses.put(row.getObject(1, UUID.class), row.getString(2));
            }
        }
        return uses;
    }

    /** What was noted before stays noted, and belongs to no line. */
    static void forget(Connection connection, UUID line) throws SQLException {
        for (String sql : List.of(
                "delete from bank_line_use where line_id = ? and how = 'noted'",
                "delete from bank_line_dismissal where line_id = ?")) {
            try (PreparedStatement delete = connection.prepareStatement(sql)) {
                delete.setObject(1, line);
                delete.executeUpdate();
            }
        }
    }
}
