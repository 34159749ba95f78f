package changeover.contracts.tenants;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Many rows go into a table by one statement, one array a column, whatever their number. */
public final class ManyRows {

    private final String table;
    private final List<String> names;
    private final List<String> types;
    private final List<List<@Nullable Object>> columns = new ArrayList<>();

    /** {@code ManyRows.into("plan_task", "plan_id uuid, task_code text, position int")}. */
    public static ManyRows into(String table, String columns) {
        return new ManyRows(table, columns.split(",\\s*"));
    }

    private ManyRows(String table, String[] declared) {
        this.table = table;
        names = Arrays.stream(declared).map(one -> one.split(" ")[0]).toList();
        types = Arrays.stream(declared).map(one -> one.split(" ")[1]).toList();
        names.forEach(_ -> columns.add(new ArrayList<>()));
    }

    /** One row, its values in the order of the columns. */
    public ManyRows add(@Nullable Object... values) {
        if (values.length != names.size()) {
            throw new IllegalArgumentException(values.length + " values for " + names);
        }
        for (int at = 0; at < values.length; at++) {
            columns.get(at).add(values[at]);
        }
        return this;
    }

    public int size() {
        return columns.getFirst().size();
    }

    /** Stores them; nothing is sent when there are none. */
    public void store(Connection connection) throws SQLException {
        if (size() == 0) {
            return;
        }
        String list = String.join(", ", names);
        String casts = types.stream().map(type -> "?::" + type + "[]").collect(Collectors.joining(", "));
        try (var insert = connection.prepareStatement(
                "insert into " + table + " (" + list + ") select * from unnest(" + casts + ")")) {
            for (int at = 0; at < names.size(); at++) {
                insert.setArray(at + 1, connection.createArrayOf(types.get(at), said(columns.get(at))));
            }
            insert.executeUpdate();
        }
    }

    private static @Nullable Object[] said(List<@Nullable Object> column) {
        @Nullable Object[] said = new @Nullable Object[column.size()];
        for (int row = 0; row < said.length; row++) {
            Object value = column.get(row);
            said[row] = value == null ? null : value.toString();
        }
        return said;
    }
}
