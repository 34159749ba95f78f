package changeover.deploy.admin;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.PostgresForTests;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Savepoint;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A row that somebody spoils past every rule, as only the database's owner can, is found and counted. */
class SpoiledRowsTest {
    private static final PostgresForTests POSTGRES = new PostgresForTests();

    private static Connection database;

    @BeforeAll
    static void start() throws SQLException, IOException {
        Map<String, String> known = POSTGRES.start();
        String url = Objects.requireNonNull(known.get("quarkus.datasource.jdbc.url"));
        Flyway.configure()
                .dataSource(url, "changeover_owner", "owner")
                .locations(
                        "classpath:db/contracts", "classpath:db/scheduling", "classpath:db/billing", "classpath:db/web")
                .placeholders(Map.of("app", "changeover_app", "lookup", "changeover_lookup"))
                .outOfOrder(true)
                .load()
                .migrate();
        database = DriverManager.getConnection(url, "postgres", "postgres");
        database.setAutoCommit(false);
        try (var rows = SpoiledRowsTest.class.getResourceAsStream("/changeover/deploy/admin/rows.sql")) {
            does(new String(Objects.requireNonNull(rows).readAllBytes(), StandardCharsets.UTF_8));
        }
    }

    @AfterAll
    static void stop() throws SQLException {
        database.close();
        POSTGRES.stop();
    }

    @Test
    void what_nobody_spoiled_holds() throws SQLException {
        List<Invariant> ours = Stream.of(
                        PartInvariants.ALL, StopInvariants.ALL, ReviewInvariants.ALL, OwedInvariants.ALL)
                .flatMap(List::stream)
                .toList();
        for (Invariant invariant : ours) {
            assertEquals(0, invariant.on(database).bad(), invariant.name());
        }
    }

    @Test
    void a_part_that_is_lost_or_doubled_is_found() throws SQLException {
        check("update part_arrival set quantity = 3", "check parts-on-order FAIL rows=1 bad=1");
        check("update part_arrival set quantity = 1", "check parts-arrived FAIL rows=1 bad=1");
        check(
                "delete from stock_movement where operation_id in (select id from part_arrival)",
                "check parts-arrived FAIL rows=1 bad=1");
        check(
                "insert into stock_movement (part_code, place_id, quantity, kind, operation_id, day)"
                        + " select 'IND-7', p.id, 2, 'receipt', a.id, a.day from part_arrival a"
                        + " join stock_place p on p.kind = 'van'",
                "check parts-arrived FAIL rows=1 bad=1");
        check(
                "delete from stock_movement where operation_id in (select id from part_return)",
                "check parts-returned FAIL rows=1 bad=1");
        check("delete from part_return", "check parts-caused FAIL rows=7 bad=1");
        check("update part_used set quantity = 2", "check parts-moved FAIL rows=1 bad=1");
        check("delete from part_used", "check parts-not-doubled FAIL rows=1 bad=1");
        check(
                "delete from stock_movement where kind = 'move' and quantity > 0",
                "check moves-balance FAIL rows=1 bad=1");
        check("delete from part_given", "check parts-caused FAIL rows=7 bad=1");
        check("delete from stock_movement where kind = 'give'", "check parts-given FAIL rows=1 bad=1");
        check(
                "update stock_movement set quantity = 2 where kind = 'receipt' and part_code = 'PAD-2';"
                        + " update stock_movement set quantity = -3 where kind = 'give'",
                "check parts-below-nought FAIL rows=3 bad=1");
    }

    @Test
    void what_belongs_together_is_of_one_home_or_of_two_that_were_made_one() throws SQLException {
        String elsewhere = "update visit set home_id = '00000000-0000-7000-8000-000000000019' where kind = 'extra'";
        String merged = "; insert into home_merge (home_id, other_id) values"
                + " ('00000000-0000-7000-8000-000000000019', '00000000-0000-7000-8000-000000000010')";
        check(elsewhere, "check second-visits FAIL rows=1 bad=1");
        check(elsewhere + merged, "check second-visits ok rows=1 bad=0");
        check(
                "update part_order set home_id = '00000000-0000-7000-8000-000000000019'",
                "check parts-on-order FAIL rows=1 bad=1");
        check(
                "update part_order set home_id = '00000000-0000-7000-8000-000000000019'" + merged,
                "check parts-on-order ok rows=1 bad=0");
    }

    @Test
    void a_deposit_that_nobody_accounts_for_is_found() throws SQLException {
        check("update payment_allocation set amount_minor = 6001", "check deposits FAIL rows=2 bad=1");
        check("update payment set kind = 'payment' where kind = 'refund'", "check deposits FAIL rows=2 bad=1");
        check("update payment set customer_id = uuidv7() where kind = 'refund'", "check deposits FAIL rows=2 bad=1");
        check("delete from deposit where number = 1", "check deposit-receipts FAIL rows=1 bad=1");
        check("delete from deposit where number = 1", "check deposit-refunds FAIL rows=1 bad=1");
    }

    @Test
    void a_stop_that_ended_without_its_ticket_is_found() throws SQLException {
        check("update back_in_service set ticket_kind = 'electrical'", "check do-not-use FAIL rows=1 bad=1");
        check("delete from stop_ticket", "check do-not-use FAIL rows=1 bad=1");
        check("delete from back_in_service", "check do-not-use FAIL rows=1 bad=1");
        String byPartner =
                "insert into partner (id, name, trade) values ('00000000-0000-7000-8000-0000000000b1', 'Park', '%s');"
                        + " insert into partner_paper (id, partner_id, kind, expires_on, remind_days) values"
                        + " ('00000000-0000-7000-8000-0000000000b2', '00000000-0000-7000-8000-0000000000b1', '%s', '%s', 60);"
                        + " update back_in_service set partner_id = '00000000-0000-7000-8000-0000000000b1',"
                        + " paper_id = '00000000-0000-7000-8000-0000000000b2'";
        check(byPartner.formatted("gas", "licence", "2099-01-01"), "check do-not-use ok rows=1 bad=0");
        check(byPartner.formatted("electrical", "licence", "2099-01-01"), "check do-not-use FAIL rows=1 bad=1");
        check(byPartner.formatted("gas", "insurance", "2099-01-01"), "check do-not-use FAIL rows=1 bad=1");
        check(byPartner.formatted("gas", "licence", "2020-01-01"), "check do-not-use FAIL rows=1 bad=1");
        check(
                "delete from machine_stop; update finding set cleared_on = null, cleared_by = null",
                "check do-not-use-stops FAIL rows=1 bad=1");
    }

    @Test
    void a_report_that_left_before_its_review_is_found() throws SQLException {
        String report =
                "insert into outbox (kind, about_id, about_version, way, message_id, to_name, language, subject, body)"
                        + " select 'report', visit_id, %d, 'letter', '<1@example.com>', 'Anselm Birk', 'en', 'Report', 'Report'"
                        + " from review_hold";
        check(report.formatted(1), "check reviews ok rows=1 bad=0");
        check(report.formatted(2), "check reviews FAIL rows=1 bad=1");
    }

    /** What was spoiled is put back whatever was found. */
    private static void check(String spoil, String line) throws SQLException {
        Savepoint before = database.setSavepoint();
        try {
            does(spoil);
            String name = line.split(" ")[1];
            List<String> lines = Invariants.all().stream()
                    .filter(invariant -> invariant.name().equals(name))
                    .map(SpoiledRowsTest::line)
                    .toList();
            assertEquals(List.of(line), lines, spoil);
        } finally {
            database.rollback(before);
        }
    }

    private static String line(Invariant invariant) {
        try {
            return invariant.on(database).line();
        } catch (SQLException cause) {
            throw new IllegalStateException(invariant.name(), cause);
        }
    }

    private static void does(String sql) throws SQLException {
        try (Statement statement = database.createStatement()) {
            statement.execute(sql);
        }
    }
}
