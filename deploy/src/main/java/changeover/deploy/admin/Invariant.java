package changeover.deploy.admin;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;

/**
 * Something that must be true of the data whatever happened to them.
 *
 * @param name as it is printed
 * @param table the rows it speaks of; the check is left out on data that have no such table yet
 * @param sql one row, seen by the owner over all businesses: how many rows were looked at, and how many of them are bad
 */
record Invariant(String name, String table, String sql) {

    /** How many rows were looked at, and how many of them are bad. */
    record Found(String name, long rows, long bad) {

        /** As it is printed; scripts read it. */
        String line() {
            return "check %s %s rows=%d bad=%d".formatted(name, bad == 0 ? "ok" : "FAIL", rows, bad);
        }
    }

    Found on(Connection owner) throws SQLException {
        try (Statement statement = owner.createStatement();
                ResultSet row = statement.executeQuery(sql)) {
            row.next();
            return new Found(name, row.getLong(1), row.getLong(2));
        }
    }
}
