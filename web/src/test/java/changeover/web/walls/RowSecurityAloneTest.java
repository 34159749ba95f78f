package changeover.web.walls;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** With every filter of the application off, the database alone keeps one business's rows from another. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class RowSecurityAloneTest {

    private static final int SWITCHES = Boolean.getBoolean("changeover.deep") ? 100_000 : 500;

    @Inject
    ALivedInShop shops;

    @Inject
    OwnersEyes eyes;

    private final List<String> wrong = new ArrayList<>();

    @Test
    void no_statement_reaches_a_row_of_another_business() throws SQLException {
        UUID ours = shops.ours().shop().tenant();
        UUID theirs = shops.theirs().shop().tenant();
        int full = 0;
        for (String table : eyes.owned()) {
            boolean filled = !eyes.texts("select 1 from " + table + " where tenant_id = ? limit 1", theirs)
                    .isEmpty();
            full += filled ? 1 : 0;
            for (UUID asking : new UUID[] {ours, null}) {
                try (Connection connection = eyes.application(asking)) {
                    connection.setAutoCommit(false);
                    touched(
                            connection,
                            table,
                            asking,
                            "select count(*) from " + table + " where tenant_id = ?",
                            theirs);
                    touched(
                            connection,
                            table,
                            asking,
                            "update " + table + " set tenant_id = tenant_id where tenant_id = ?",
                            theirs);
                    touched(connection, table, asking, "delete from " + table + " where tenant_id = ?", theirs);
                    inserted(connection, table, theirs);
                }
            }
        }
        assertEquals(List.of(), wrong);
        assertTrue(full >= 50, full + " of " + eyes.owned().size() + " tables had rows to try");
    }

    @Test
    void a_view_shows_no_more_than_its_tables() throws SQLException {
        UUID ours = shops.ours().shop().tenant();
        for (String view : eyes.texts(
                "select relname from pg_class where relkind in ('v', 'm') and relnamespace = 'public'::regnamespace")) {
            try (Connection connection = eyes.application(ours);
                    var ask = connection.prepareStatement("select * from " + view);
                    var rows = ask.executeQuery()) {
                while (rows.next()) {
                    for (int at = 1; at <= rows.getMetaData().getColumnCount(); at++) {
                        boolean owner = rows.getMetaData().getColumnName(at).equals("tenant_id");
                        if (owner && !ours.toString().equals(rows.getString(at))) {
                            wrong.add(view + " shows another's row");
                        }
                    }
                }
            }
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    void a_connection_that_changes_hands_forgets() throws SQLException {
        UUID ours = shops.ours().shop().tenant();
        UUID theirs = shops.theirs().shop().tenant();
        try (Connection connection = eyes.application(ours);
                var set = connection.prepareStatement("select set_config('app.tenant', ?, true)");
                var ask = connection.prepareStatement("select distinct tenant_id::text from home")) {
            connection.setAutoCommit(false);
            for (int at = 0; at < SWITCHES; at++) {
                UUID now = at % 2 == 0 ? ours : theirs;
                set.setString(1, now.toString());
                set.execute();
                try (var rows = ask.executeQuery()) {
                    assertTrue(rows.next());
                    assertEquals(now.toString(), rows.getString(1));
                    assertTrue(!rows.next());
                }
                connection.commit();
            }
        }
    }

    /** A refusal is as good as nothing reached. */
    private void touched(Connection connection, String table, @Nullable UUID asking, String sql, UUID theirs)
            throws SQLException {
        var before = connection.setSavepoint();
        try (var statement = connection.prepareStatement(sql)) {
            statement.setObject(1, theirs);
            int reached;
            if (sql.startsWith("select")) {
                try (var row = statement.executeQuery()) {
                    reached = row.next() ? row.getInt(1) : 0;
                }
            } else {
                reached = statement.executeUpdate();
            }
            if (reached != 0) {
                wrong.add((asking == null ? "nobody: " : "another: ") + sql + " reached " + reached);
            }
        } catch (SQLException refused) {
            if (!refused.getSQLState().startsWith("42")
                    && !refused.getSQLState().startsWith("23")) {
                wrong.add(table + ": " + refused.getMessage());
            }
        } finally {
            connection.rollback(before);
        }
    }

    /** One of their own rows, copied under a new id, is not taken from anybody else. */
    private void inserted(Connection connection, String table, UUID theirs) throws SQLException {
        List<String> rows =
                eyes.texts("select row_to_json(t)::text from " + table + " t where tenant_id = ? limit 1", theirs);
        if (rows.isEmpty()) {
            return;
        }
        var before = connection.setSavepoint();
        try (var insert = connection.prepareStatement(
                "insert into " + table + " select * from json_populate_record(null::" + table + ", ?::json)")) {
            insert.setString(1, rows.getFirst());
            insert.executeUpdate();
            wrong.add(table + " took a row of another business");
        } catch (SQLException refused) {
            boolean walled = refused.getSQLState().equals("42501")
                    || refused.getSQLState().equals("428C9");
            if (!walled) {
                wrong.add(table + " refused by " + refused.getSQLState() + " " + refused.getMessage());
            }
        } finally {
            connection.rollback(before);
        }
    }
}
