package changeover.billing.invoices;

import changeover.contracts.words.Refusal;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The numbers of one series, allotted inside the transaction that issues: whoever comes second waits, and a transaction
 * that is undone leaves no gap.
 */
final class Counter {

    private final Connection connection;
    private final String series;
    private long last;
    private byte[] hash;
    private final @Nullable LastIssued before;

    private Counter(Connection connection, String series, long last, byte[] hash, @Nullable LastIssued before) {
        this.connection = connection;
        this.series = series;
        this.last = last;
        this.hash = hash;
        this.before = before;
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
            LastIssued before = LastIssued.of(connection, series).orElse(null);
            return new Counter(connection, series, row.getLong(1), row.getBytes(2), before);
        }
    }

    /** Why nothing may be issued on the day: numbers and days rise together. */
    Optional<Refusal> refusal(LocalDate day) {
        return before == null ? Optional.empty() : before.refusal(day);
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
