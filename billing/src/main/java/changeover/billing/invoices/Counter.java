package changeover.billing.invoices;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;

/**
 * The numbers of one series, allotted inside the transaction that issues: whoever comes second waits, and a transaction
 * that is undone leaves no gap.
 */
final class Counter {

    private final Connection connection;
    private final String series;
    private long last;
    private byte[] hash;

    private Counter(Connection connection, String series, long last, byte[] hash) {
        this.connection = connection;
        this.series = series;
        this.last = last;
        this.hash = hash;
    }

    /** Opens the series when it is new and locks it until the transaction ends. */
    static Counter locked(Connection connection, String series) throws SQLException {
        try (PreparedStatement insert = connection.prepareStatement("""
                insert into number_counter (series, first_number, last_number, last_hash) values (?, 1, 0, ?)
                on conflict (tenant_id, series) do nothing""")) {
            insert.setString(1, series);
            insert.setBytes(2, FrozenText.NOTHING);
            insert.executeUpdate();
        }
        try (PreparedStatement select = connection.prepareStatement(
                "select last_number, last_hash from number_counter where series = ? for update")) {
            select.setString(1, series);
            ResultSet row = select.executeQuery();
            row.next();
            return new Counter(connection, series, row.getLong(1), row.getBytes(2));
        }
    }

    long next() {
        return ++last;
    }

    byte[] lastHash() {
        return hash;
    }

    void follow(byte[] newHash) {
        hash = newHash;
    }

    void store() throws SQLException {
        try (PreparedStatement update = connection.prepareStatement(
                "update number_counter set last_number = ?, last_hash = ? where series = ?")) {
            update.setLong(1, last);
            update.setBytes(2, hash);
            update.setString(3, series);
            update.executeUpdate();
        }
    }
}
