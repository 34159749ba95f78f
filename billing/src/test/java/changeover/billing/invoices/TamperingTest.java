package changeover.billing.invoices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.ABusiness;
import changeover.contracts.PostgresForTests;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import org.eclipse.microprofile.config.ConfigProvider;
import org.junit.jupiter.api.Test;

/** Whatever the tables' owner changes behind the triggers' back, the chain finds it: each column is tried by its name. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class TamperingTest {

    private static final List<String> TABLES = List.of("invoice_issue", "invoice_line", "invoice_tax");

    /** What is neither printed nor asked for: who wrote the row and with what, and what reckoning a line anew goes by. */
    private static final Set<String> NOT_FROZEN = Set.of(
            "id",
            "tenant_id",
            "made_by",
            "made_at",
            "batch",
            "visit_version",
            "visit_changed",
            "reckoned_minor",
            "reckoned_quantity");

    /** Where a constraint of the table lets a change through only in this way. */
    private static final Map<String, String> CHANGES = Map.ofEntries(
            Map.entry("invoice_issue.number", "number = number + 1000"),
            Map.entry("invoice_issue.form", "form = 1"),
            Map.entry("invoice_issue.subtotal_minor", "subtotal_minor = subtotal_minor + 1, tax_minor = tax_minor - 1"),
            Map.entry("invoice_issue.tax_minor", "tax_minor = tax_minor + 1, total_minor = total_minor + 1"),
            Map.entry(
                    "invoice_issue.total_minor", "subtotal_minor = subtotal_minor + 1, total_minor = total_minor + 1"),
            Map.entry("invoice_issue.untaxed_category", "untaxed_category = 'O', untaxed_en = 'x', untaxed_fr = 'x'"),
            Map.entry("invoice_issue.untaxed_en", "untaxed_category = 'O', untaxed_en = 'x', untaxed_fr = 'x'"),
            Map.entry("invoice_issue.untaxed_fr", "untaxed_category = 'O', untaxed_en = 'x', untaxed_fr = 'x'"),
            Map.entry("invoice_issue.reason_en", "reason_en = 'x', reason_fr = ''"),
            Map.entry("invoice_issue.reason_fr", "reason_en = '', reason_fr = 'x'"),
            Map.entry("invoice_tax.exemption_en", "exemption_en = 'x', exemption_fr = ''"),
            Map.entry("invoice_tax.exemption_fr", "exemption_en = '', exemption_fr = 'x'"),
            Map.entry("invoice_line.position", "position = position + 50"),
            Map.entry("invoice_tax.position", "position = position + 50"),
            Map.entry("invoice_line.kind", "kind = 'other'"),
            Map.entry("invoice_line.coverage", "coverage = 'discounted'"),
            Map.entry("invoice_line.work", "work = 'repair'"),
            Map.entry("invoice_line.contract_form", "contract_form = 'separate'"),
            Map.entry("invoice_line.unit", "unit = 'HUR'"),
            Map.entry("invoice_line.home_id", "home_id = null"));

    @Inject
    ABusiness business;

    @Inject
    Drafts drafts;

    @Inject
    Invoices invoices;

    @Test
    void a_change_of_any_frozen_column_is_found() throws Exception {
        UUID tenant = business.quebec();
        List<UUID> ids = issued(tenant, 3);
        List<String> missed = new ArrayList<>();
        for (String table : TABLES) {
            for (String column : columns(table)) {
                String where = table.equals("invoice_issue") ? "" : " and position = 1";
                if (List.of("invoice_id", "agreement_id", "visit_id").contains(column)) {
                    continue;
                }
                String changed = CHANGES.get(table + "." + column);
                String set = changed == null ? change(table, column) : changed;
                String sql = "update " + table + " set " + set + " where invoice_id = '" + ids.get(1) + "'" + where;
                if (broken(tenant, sql).isEmpty()) {
                    missed.add(sql);
                }
            }
        }
        assertEquals(List.of(), missed);
    }

    @Test
    void what_is_added_taken_away_moved_or_swapped_is_found() throws Exception {
        UUID tenant = business.quebec();
        List<UUID> ids = issued(tenant, 5);
        UUID third = ids.get(2);
        UUID last = ids.get(4);
        for (String sql : List.of(
                "delete from invoice_line where invoice_id = '" + third + "' and position = 2",
                "delete from invoice_tax where invoice_id = '" + third + "' and position = 2",
                "delete from invoice_issue where invoice_id = '" + third + "'",
                "delete from invoice_issue where invoice_id = '" + last + "'",
                "update invoice_line set invoice_id = '" + last + "', position = 9 where invoice_id = '" + third
                        + "' and position = 1",
                "update number_counter set last_hash = sha256('x') where tenant_id = '" + tenant + "'",
                "delete from number_counter where tenant_id = '" + tenant + "'",
                swap(third, last))) {
            assertTrue(!broken(tenant, sql).isEmpty(), sql);
        }
    }

    /** Documents issued before they had these columns keep their own hash, and the chain goes on from them. */
    @Test
    void a_document_of_the_first_form_still_holds() throws Exception {
        UUID tenant = business.quebec();
        UUID id = issued(tenant, 1).getFirst();
        try (Connection owner = owner()) {
            owner.setAutoCommit(false);
            behind(
                    owner,
                    "update invoice_issue set form = 1, type_code = null, terms_en = null, terms_fr = null"
                            + " where invoice_id = '" + id + "'");
            assertEquals(1, broken(owner, tenant).size(), "its hash is of the second form");
            byte[] hash = firstFormsHash(owner, id);
            for (String sql : List.of(
                    "update invoice_issue set hash = ? where invoice_id = '" + id + "'",
                    "update number_counter set last_hash = ? where tenant_id = '" + tenant + "'")) {
                try (var update = owner.prepareStatement(sql)) {
                    update.setBytes(1, hash);
                    update.executeUpdate();
                }
            }
            assertEquals(List.of(), broken(owner, tenant));
            owner.rollback();
        }
    }

    private static byte[] firstFormsHash(Connection owner, UUID id) throws SQLException {
        InvoiceRows rows = new InvoiceRows();
        try (var select = owner.prepareStatement(
                "select " + IssueRow.COLUMNS + " from invoice_issue s where s.invoice_id = '" + id + "'")) {
            var row = select.executeQuery();
            row.next();
            IssueRow issue = IssueRow.of(row);
            assertEquals(null, issue.terms());
            return FrozenText.hash(
                    FrozenText.NOTHING, issue, rows.lines(owner, List.of(id)), rows.taxes(owner, List.of(id)));
        }
    }

    private List<UUID> issued(UUID tenant, int count) {
        return business.in(tenant, () -> {
            UUID customer = business.customer("Ida Roe");
            UUID home = business.home(customer, "QC");
            List<Draft> all = new ArrayList<>();
            for (int at = 0; at < count; at++) {
                all.add(SomeDrafts.plan(customer, home, (at + 100) + ".00", "7.35"));
            }
            List<UUID> ids = drafts.write(all);
            assertEquals(count, invoices.issue(ids, SomeDrafts.DAY).issued().size());
            return ids;
        });
    }

    private static List<String> columns(String table) throws SQLException {
        List<String> columns = new ArrayList<>();
        try (Connection owner = owner();
                var select = owner.prepareStatement(
                        "select column_name from information_schema.columns where table_name = ? order by 1")) {
            select.setString(1, table);
            var row = select.executeQuery();
            while (row.next()) {
                if (!NOT_FROZEN.contains(row.getString(1))) {
                    columns.add(row.getString(1));
                }
            }
        }
        return columns;
    }

    private static String change(String table, String column) throws SQLException {
        try (Connection owner = owner();
                var select = owner.prepareStatement("""
                        select data_type from information_schema.columns where table_name = ? and column_name = ?""")) {
            select.setString(1, table);
            select.setString(2, column);
            var row = select.executeQuery();
            row.next();
            return column + " = "
                    + switch (Objects.requireNonNull(row.getString(1))) {
                        case "text" -> "coalesce(" + column + ", '') || '.'";
                        case "character" -> "'xx'";
                        case "bigint", "integer", "numeric" -> "coalesce(" + column + ", 0) + 1";
                        case "date" -> column + " + 1";
                        case "boolean" -> "not " + column;
                        case "uuid" -> "uuidv7()";
                        case "json" -> "replace(" + column + "::text, 'Port-Ambroise', 'Port-Ambroise-Sud')::json";
                        case "bytea" -> "sha256(" + column + ")";
                        case "ARRAY" -> column + " || 99";
                        default -> throw new IllegalStateException(table + "." + column + ": " + row.getString(1));
                    };
        }
    }

    private static String swap(UUID one, UUID other) {
        return """
                create temp table swapped on commit drop as
                  select invoice_id, number, label from invoice_issue where invoice_id in ('%1$s', '%2$s');
                update invoice_issue set number = number + 1000, label = label || '-' where invoice_id in ('%1$s', '%2$s');
                update invoice_issue s set number = w.number, label = w.label
                  from swapped w where w.invoice_id <> s.invoice_id and s.invoice_id in ('%1$s', '%2$s')""".formatted(one, other);
    }

    /** What the check says of the business after the change, which is then undone. */
    private static List<ChainCheck.Broken> broken(UUID tenant, String sql) throws SQLException {
        try (Connection owner = owner()) {
            owner.setAutoCommit(false);
            behind(owner, sql);
            List<ChainCheck.Broken> broken = broken(owner, tenant);
            owner.rollback();
            return broken;
        }
    }

    private static void behind(Connection owner, String sql) throws SQLException {
        try (var statement = owner.createStatement()) {
            for (String table : TABLES) {
                statement.execute("alter table " + table + " disable trigger user");
            }
            statement.execute(sql);
        }
    }

    private static List<ChainCheck.Broken> broken(Connection owner, UUID tenant) throws SQLException {
        return ChainCheck.of(owner).broken().stream()
                .filter(one -> one.tenant().equals(tenant))
                .toList();
    }

    private static Connection owner() throws SQLException {
        String url = ConfigProvider.getConfig().getValue("quarkus.datasource.jdbc.url", String.class);
        return DriverManager.getConnection(url, "changeover_owner", "owner");
    }
}
