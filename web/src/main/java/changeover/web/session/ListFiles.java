package changeover.web.session;

import changeover.contracts.words.CsvTable;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Takes a list of the business out as a file, in one statement. */
@ApplicationScoped
public class ListFiles {

    @Inject
    AgroalDataSource datasource;

    public byte[] take(ListFile list) {
        try (Connection connection = datasource.getConnection();
                PreparedStatement ask = connection.prepareStatement(list.sql());
                ResultSet row = ask.executeQuery()) {
            ResultSetMetaData columns = row.getMetaData();
            String[] titles = new String[columns.getColumnCount()];
            for (int at = 0; at < titles.length; at++) {
                titles[at] = columns.getColumnLabel(at + 1);
            }
            var table = new CsvTable(titles);
            while (row.next()) {
                table.row(cells(row, titles.length));
            }
            return table.bytes();
        } catch (SQLException cause) {
            throw new IllegalStateException("the list could not be taken out: " + list.code(), cause);
        }
    }

    private static @Nullable Object[] cells(ResultSet row, int columns) throws SQLException {
        @Nullable Object[] cells = new @Nullable Object[columns];
        for (int at : IntStream.rangeClosed(1, columns).toArray()) {
            cells[at - 1] = row.getObject(at);
        }
        return cells;
    }
}
