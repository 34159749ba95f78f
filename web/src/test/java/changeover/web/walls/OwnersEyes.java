package changeover.web.walls;

import jakarta.annotation.PreDestroy;
import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jspecify.annotations.Nullable;

/** Sees the rows of every business, as the role that migrates does; and lends connections outside every pool. */
@ApplicationScoped
public class OwnersEyes {

    @ConfigProperty(name = "quarkus.datasource.jdbc.url")
    String url;

    private final Map<String, List<String>> known = new ConcurrentHashMap<>();

    /** Kept open: a connection of its own for each question took most of the time of whoever asks thousands. */
    private @Nullable Connection kept;

    @PreDestroy
    void close() throws SQLException {
        if (kept != null) {
            kept.close();
        }
    }

    Connection owner() throws SQLException {
        return DriverManager.getConnection(url, "changeover_owner", "owner");
    }

    /** The application's own role, with a business set for the connection, or with none. */
    Connection application(@Nullable UUID tenant) throws SQLException {
        Connection connection = DriverManager.getConnection(url, "changeover_app", "app");
        try (var set = connection.prepareStatement("select set_config('app.tenant', ?, false)")) {
            set.setString(1, tenant == null ? "" : tenant.toString());
            set.execute();
        }
        return connection;
    }

    /** Every table that belongs to a business, by name. */
    List<String> owned() {
        return known.computeIfAbsent("owned", _ -> texts("""
                select c.relname from pg_class c join pg_attribute a on a.attrelid = c.oid and a.attname = 'tenant_id'
                 where c.relkind in ('r', 'p') and not c.relispartition
                   and c.relnamespace = 'public'::regnamespace order by 1
                """));
    }

    /** The values of one column for one business, in order. */
    List<String> values(String column, UUID tenant) {
        String table = column.substring(0, column.indexOf('.'));
        return texts(
                "select distinct " + column + "::text x from " + table + " where tenant_id = ? and " + column
                        + " is not null order by x",
                tenant);
    }

    /** Where an id of one business stands: table and column. */
    Optional<String> whereIs(String id, UUID tenant) {
        String tables = String.join(" ", owned());
        List<String> columns = known.computeIfAbsent("ids", _ -> texts("""
                select table_name || '.' || column_name from information_schema.columns
                 where table_schema = 'public' and (column_name = 'id' or table_name || '.' || column_name = 'membership.person_id')
                   and table_name = any (string_to_array(?, ' ')) order by column_name, table_name
                """, tables));
        List<String> found = known.computeIfAbsent(
                "at " + id + tenant,
                _ -> texts(
                        columns.stream().map(column -> at(column, id)).collect(Collectors.joining(" union all ")),
                        Collections.nCopies(columns.size(), tenant).toArray()));
        if (found.isEmpty()) {
            known.remove("at " + id + tenant);
        }
        return found.stream().findFirst();
    }

    private static String at(String column, String id) {
        return "select '" + column + "' from " + column.substring(0, column.indexOf('.')) + " where tenant_id = ? and "
                + column + "::text = '" + id + "'";
    }

    /** One line for each owned table: what this business's rows say, in short. */
    Map<String, String> checksum(UUID tenant) {
        Map<String, String> sums = new TreeMap<>();
        for (String table : owned()) {
            sums.put(
                    table,
                    texts(
                                    "select count(*) || ' ' || coalesce(md5(string_agg(md5(t::text), '' order by md5(t::text))), '')"
                                            + " from " + table + " t where tenant_id = ?",
                                    tenant)
                            .getFirst());
        }
        return sums;
    }

    synchronized List<String> texts(String sql, Object... values) {
        try {
            Connection connection = kept == null ? owner() : kept;
            kept = connection;
            try (var ask = connection.prepareStatement(sql)) {
                for (int i = 0; i < values.length; i++) {
                    ask.setObject(i + 1, values[i]);
                }
                try (var row = ask.executeQuery()) {
                    var all = new ArrayList<String>();
                    while (row.next()) {
                        all.add(row.getString(1));
                    }
                    return all;
                }
            }
        } catch (SQLException cause) {
            throw new IllegalStateException(sql, cause);
        }
    }
}
