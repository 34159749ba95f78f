package changeover.billing.documents;

import io.agroal.api.AgroalDataSource;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One question to the database, in the business's transaction; the answers to its marks are sent as text. */
record Question(AgroalDataSource database, String sql) {

    /** How a row is read. */
    interface Reading<T> {
        T of(ResultSet row) throws SQLException;
    }

    <T> List<T> all(Reading<T> reading, Object... answers) {
        List<T> all = new ArrayList<>();
        try (var connection = database.getConnection();
                PreparedStatement select = connection.prepareStatement(sql)) {
            for (int at = 0; at < answers.length; at++) {
                select.setString(at + 1, answers[at].toString());
            }
            try (ResultSet row = select.executeQuery()) {
                while (row.next()) {
                    all.add(reading.of(row));
                }
            }
        } catch (SQLException cause) {
            throw new IllegalStateException(cause);
        }
        return all;
    }

    <T> Optional<T> first(Reading<T> reading, Object... answers) {
        return all(reading, answers).stream().findFirst();
    }
}
