package changeover.web.walls;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.tenants.CurrentTenant;
import io.agroal.api.AgroalDataSource;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * The second lock by itself: with plain statements that name another business's rows outright, and none of the
 * application's own filters, the database gives nothing, changes nothing and takes nothing.
 */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class RowSecurityAloneTest {

    private static final int SWITCHES = Boolean.getBoolean("changeover.deep") ? 100_000 : 500;

    /** What row security answers, and what a table answers whose rows are not for changing. */
    private static final String REFUSED = "42501";

    private static final String NO_SUCH_ROW = "23503";

    @Inject
    ALivedInShop shops;

    @Inject
    OwnersEyes eyes;

    @Inject
    CatalogueOfTables tables;

    @Inject
    CurrentTenant current;

    @Inject
    AgroalDataSource pool;

    private final List<String> wrong = new ArrayList<>();
    private UUID ours;
    private UUID theirs;

    @BeforeEach
    void twoBusinesses() {
        ours = shops.ours().shop().tenant();
        theirs = shops.theirs().shop().tenant();
    }

    @Test
    void no_statement_reaches_a_row_of_another_business() throws SQLException {
        Map<String, String> before = eyes.checksum(theirs);
        try (Connection inside = eyes.application(ours);
                Connection nowhere = eyes.application(null)) {
            for (String table : eyes.owned()) {
                String row = tables.row(table, theirs).orElse(null);
                if (row == null) {
                    wrong.add(table + ": no row to try it on; write one in walls/rest.sql");
                    continue;
                }
                String of = " where tenant_id = '" + theirs + "'";
                nothing(inside, table, "select 1 from " + table + of);
                nothing(nowhere, table, "select 1 from " + table + of);
                nothing(inside, table, "update " + table + " set tenant_id = tenant_id" + of);
                nothing(inside, table, "delete from " + table + of);
                refused(inside, table, tables.insert(table), tables.anew(row, table));
                refused(nowhere, table, tables.insert(table), tables.anew(row, table));
                tables.row(table, ours).ifPresent(own -> stolen(inside, table, own));
            }
            for (String view : tables.views()) {
                nothing(inside, view, "select 1 from " + view + " where tenant_id = '" + theirs + "'");
                nothing(nowhere, view, "select 1 from " + view);
            }
        }
        assertEquals(List.of(), wrong);
        assertEquals(before, eyes.checksum(theirs));
    }

    /** A row of ours cannot be handed over either. */
    private void stolen(Connection inside, String table, String own) {
        String hand = "update " + table + " set tenant_id = '" + theirs + "' where id = (?::jsonb ->> 'id')::uuid";
        refused(inside, table, hand, own);
    }

    @Test
    void no_reference_points_into_another_business() throws SQLException {
        assertEquals(List.of(), tables.referencesWithoutTheirBusiness());
        int proved = 0;
        try (Connection inside = eyes.application(ours)) {
            inside.setAutoCommit(false);
            for (var reference : tables.references()) {
                String own = tables.row(reference.table(), ours).orElse(null);
                String other = tables.row(reference.target(), theirs).orElse(null);
                if (own == null || other == null) {
                    wrong.add(reference + ": no row to try it on");
                    continue;
                }
                List<String> states = List.of(
                        tried(inside, reference.insert(tables), tables.anew(own, reference.table()), other),
                        tried(inside, reference.update(), own, other));
                if (states.contains("")) {
                    wrong.add(reference + " took a row of another business");
                }
                proved += states.contains(NO_SUCH_ROW) ? 1 : 0;
            }
        }
        assertEquals(List.of(), wrong);
        int all = tables.references().size();
        System.out.println("walls: references=" + all + " refused by the reference itself=" + proved);
        assertTrue(proved > all / 2, proved + " of " + all);
    }

    /** @return the state that the database refused with; empty when it did not */
    private String tried(Connection inside, String sql, String own, String other) throws SQLException {
        try (var statement = inside.prepareStatement(sql);
                var all = inside.createStatement()) {
            all.execute("set constraints all immediate");
            statement.setString(1, own);
            statement.setString(2, other);
            return statement.executeUpdate() == 0 ? "none" : "";
        } catch (SQLException refusal) {
            return refusal.getSQLState();
        } finally {
            inside.rollback();
        }
    }

    @Test
    void a_connection_of_the_pool_never_remembers_another_business() throws Exception {
        long seed = Long.getLong("changeover.seed", System.nanoTime());
        System.out.println("walls: switches=" + SWITCHES + " seed=" + seed);
        try (var crew = Executors.newFixedThreadPool(4)) {
            List<Callable<Integer>> work = new ArrayList<>();
            for (int hand = 0; hand < 4; hand++) {
                var random = new Random(seed + hand);
                work.add(() -> switches(random));
            }
            for (var done : crew.invokeAll(work)) {
                assertEquals(0, done.get());
            }
        }
    }

    /** @return how many rows of the wrong business were seen */
    private int switches(Random random) {
        int seen = 0;
        for (int i = 0; i < SWITCHES / 4; i++) {
            UUID tenant = random.nextBoolean() ? ours : theirs;
            seen += current.run(tenant, CurrentTenant.NOBODY, () -> foreign(tenant));
        }
        return seen;
    }

    private int foreign(UUID tenant) throws SQLException {
        try (Connection connection = pool.getConnection();
                var ask = connection.prepareStatement(
                        "select count(*) filter (where tenant_id <> ?), count(*) from customer")) {
            ask.setObject(1, tenant);
            try (var row = ask.executeQuery()) {
                row.next();
                return row.getInt(2) == 0 ? 1 : row.getInt(1);
            }
        }
    }

    private void nothing(Connection connection, String table, String sql) {
        try (var statement = connection.createStatement()) {
            boolean rows = statement.execute(sql);
            if (rows ? statement.getResultSet().next() : statement.getUpdateCount() != 0) {
                wrong.add(table + ": reached by " + sql);
            }
        } catch (SQLException refusal) {
            if (!REFUSED.equals(refusal.getSQLState())) {
                wrong.add(table + ": " + refusal.getMessage());
            }
        }
    }

    private void refused(Connection connection, String table, String sql, String row) {
        try (var statement = connection.prepareStatement(sql)) {
            statement.setString(1, row);
            wrong.add(table + ": took " + statement.executeUpdate() + " by " + sql);
        } catch (SQLException refusal) {
            if (!REFUSED.equals(refusal.getSQLState())) {
                wrong.add(table + ": refused by something else: " + refusal.getMessage());
            }
        }
    }
}
