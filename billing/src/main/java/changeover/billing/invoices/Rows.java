package changeover.billing.invoices;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Many rows go into a table by one statement: {@code insert into … select … from unnest(…)}, one array a column.
 *
 * <p>A column of arrays is written as text ({@code {1,2}}) and cast by the database.
 */
public final class Rows {

    private final String[] names;
    private final String[] types;
    private final String sql;
    private final List<@Nullable Object[]> rows = new ArrayList<>();

    /** {@code new Rows("invoice_tax", "id uuid, lines int[]")}. */
    public Rows(String table, String columns) {
        String[] declared = columns.split(",\\s*");
        names = Arrays.stream(declared).map(one -> one.split(" ")[0]).toArray(String[]::new);
        types = Arrays.stream(declared).map(one -> one.split(" ")[1]).toArray(String[]::new);
        StringBuilder casts = new StringBuilder();
        StringBuilder selected = new StringBuilder();
        for (int at = 0; at < names.length; at++) {
            casts.append(at == 0 ? "" : ", ").append("?::").append(sent(at)).append("[]");
            selected.append(at == 0 ? "" : ", ").append("r.").append(names[at]);
            if (types[at].endsWith("[]")) {
                selected.append("::").append(types[at]);
            }
        }
        String list = String.join(", ", names);
        sql = "insert into " + table + " (" + list + ") select " + selected + " from unnest(" + casts + ") as r(" + list
                + ")";
    }

    private String sent(int at) {
        return types[at].endsWith("[]") ? "text" : types[at];
    }

    public void add(@Nullable Object... values) {
        if (values.length != names.length) {
            throw new IllegalArgumentException(values.length + " values for " + names.length + " columns");
        }
        rows.add(values);
    }

    public int size() {
        return rows.size();
    }

    public void insert(Connection connection) throws SQLException {
        insert(connection, sql);
    }

    /** What is there already stays as it is. */
    public void insertMissing(Connection connection) throws SQLException {
        insert(connection, sql + " on conflict do nothing");
    }

    private void insert(Connection connection, String statement) throws SQLException {
        if (rows.isEmpty()) {
            return;
        }
        try (var insert = connection.prepareStatement(statement)) {
            for (int at = 0; at < names.length; at++) {
                insert.setArray(at + 1, connection.createArrayOf(sent(at), column(at)));
            }
            insert.executeUpdate();
        }
    }

    private @Nullable Object[] column(int at) {
        boolean bytes = types[at].equals("bytea");
        @Nullable Object[] column = bytes ? new byte[rows.size()][] : new @Nullable Object[rows.size()];
        for (int row = 0; row < column.length; row++) {
            Object value = rows.get(row)[at];
            column[row] = value == null || bytes ? value : value.toString();
        }
        return column;
    }
}
