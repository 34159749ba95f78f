package changeover.web.walls;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jspecify.annotations.Nullable;

/** Sees the rows of every business, as the role that migrates does; and lends connections outside every pool. */
@ApplicationScoped
public class OwnersEyes {

    @ConfigProperty(name = "quarkus.datasource.jdbc.url")
    String url;

    private final Map<String, List<String>> known = new ConcurrentHashMap<>();

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
        List<String> found = known.computeIfAbsent("at " + id + tenant, _ -> {
            for (String table : owned()) {
                if (!texts("select id::text from " + table + " where tenant_id = ? and id::text = '" + id + "'", tenant)
                        .isEmpty()) {
                    return List.of(table + ".id");
                }
            }
            return texts(
                                    "select id::text from membership where tenant_id = ? and person_id::text = '" + id
                                            + "'",
                                    tenant)
                            .isEmpty()
                    ? List.of()
                    : List.of("membership.person_id");
        });
        if (found.isEmpty()) {
            known.remove("at " + id + tenant);
        }
        return found.stream().findFirst();
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

    List<String> texts(String sql, Object... values) {
        try (var connection = owner();
                var ask = connection.prepareStatement(sql)) {
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
        } catch (SQLException cause) {
            throw new IllegalStateException(sql, cause);
        }
    }
}
