package changeover.billing.invoices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.ABusiness;
import changeover.contracts.PostgresForTests;
import io.agroal.api.AgroalDataSource;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.stream.Collectors;
import org.eclipse.microprofile.config.ConfigProvider;
import org.junit.jupiter.api.Test;

/** Numbers without a gap or a double, and a chain that finds tampering. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class NumbersTest {

    private static final int THREADS = 12;

    @Inject
    ABusiness business;

    @Inject
    Drafts drafts;

    @Inject
    Invoices invoices;

    @Inject
    AgroalDataSource datasource;

    private List<UUID> some(UUID tenant, int count) {
        return business.in(tenant, () -> {
            UUID customer = business.customer("Ida Roe");
            UUID home = business.home(customer, "QC");
            List<Draft> all = new ArrayList<>();
            for (int at = 0; at < count; at++) {
                all.add(SomeDrafts.plan(customer, home, (at + 1) + ".00", "7.35"));
            }
            return drafts.write(all);
        });
    }

    private List<InvoiceChecks.Found> checks(UUID tenant) {
        return business.in(tenant, () -> {
            try (Connection connection = datasource.getConnection()) {
                return InvoiceChecks.all(connection);
            }
        });
    }

    @Test
    void many_at_once_a_fifth_undone_leave_no_gap_and_no_double() throws Exception {
        UUID tenant = business.quebec();
        int documents = Boolean.getBoolean("changeover.deep") ? 10_000 : 600;
        long seed = System.nanoTime();
        System.out.println("numbers seed=" + seed);
        List<UUID> ids = new ArrayList<>(some(tenant, documents));
        Collections.shuffle(ids, new Random(seed));
        List<Callable<Boolean>> work = new ArrayList<>();
        for (int from = 0; from < ids.size(); ) {
            int until = Math.min(ids.size(), from + 1 + new Random(seed + from).nextInt(4));
            List<UUID> batch = ids.subList(from, until);
            boolean undone = new Random(seed - from).nextInt(5) == 0;
            work.add(() -> issue(tenant, batch, undone));
            from = until;
        }
        try (var threads = Executors.newFixedThreadPool(THREADS)) {
            for (var done : threads.invokeAll(work)) {
                done.get();
            }
        }
        List<UUID> left = business.in(tenant, () -> {
            Set<UUID> issued = invoices.views(ids).stream().map(InvoiceView::id).collect(Collectors.toSet());
            return ids.stream().filter(id -> !issued.contains(id)).toList();
        });
        assertTrue(!left.isEmpty() && left.size() < documents, "some were undone, some were issued");
        business.in(tenant, () -> invoices.issue(left, SomeDrafts.DAY));
        assertEquals(
                "[numbers 0, chain 0, totals 0, credits 0]",
                checks(tenant).stream()
                        .map(check -> check.name() + " " + check.bad())
                        .toList()
                        .toString());
        assertEquals(documents, checks(tenant).getFirst().rows());
        assertEquals(
                "1 " + documents,
                business.in(tenant, () -> business.one("select min(number) || ' ' || max(number) from invoice_issue")));
    }

    private boolean issue(UUID tenant, List<UUID> batch, boolean undone) {
        try {
            business.in(tenant, () -> {
                invoices.issue(batch, SomeDrafts.DAY);
                if (undone) {
                    throw new Undone();
                }
            });
            return true;
        } catch (Undone expected) {
            return false;
        }
    }

    private static final class Undone extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    @Test
    void the_same_draft_issued_by_two_at_once_gets_one_number() throws Exception {
        UUID tenant = business.quebec();
        List<UUID> ids = some(tenant, 20);
        try (var threads = Executors.newFixedThreadPool(THREADS)) {
            List<Callable<Integer>> work = Collections.nCopies(
                    8,
                    () -> business.in(tenant, () -> invoices.issue(ids, SomeDrafts.DAY))
                            .issued()
                            .size());
            int issued = 0;
            for (var done : threads.invokeAll(work)) {
                issued += done.get();
            }
            assertEquals(20, issued);
        }
        assertEquals(
                0, checks(tenant).stream().mapToLong(InvoiceChecks.Found::bad).sum());
    }

    @Test
    void tampering_behind_the_triggers_back_is_found() throws Exception {
        UUID tenant = business.quebec();
        List<UUID> ids = some(tenant, 5);
        business.in(tenant, () -> invoices.issue(ids, SomeDrafts.DAY));
        assertEquals(0, checks(tenant).get(1).bad());
        for (String change : List.of(
                "update invoice_line set words_fr = words_fr || '.' where invoice_id = '%s' and position = 2",
                "update invoice_tax set amount_minor = amount_minor + 1 where invoice_id = '%s' and position = 1")) {
            behind(change.formatted(ids.get(2)));
            assertEquals(1, checks(tenant).get(1).bad(), change);
            behind(back(change).formatted(ids.get(2)));
        }
        assertEquals(0, checks(tenant).get(1).bad());
        behind("update invoice_issue set buyer = '{\"name\":\"Else\"}' where invoice_id = '%s'".formatted(ids.get(2)));
        assertEquals(1, checks(tenant).get(1).bad());
        behind("delete from invoice_issue where invoice_id = '%s'".formatted(ids.get(4)));
        assertEquals(2, checks(tenant).get(1).bad(), "the chain's end is not the counter's either");
        assertTrue(checks(tenant).getFirst().bad() > 0, "a number is missing");
    }

    private static String back(String change) {
        return change.replace("words_fr || '.'", "left(words_fr, -1)").replace("amount_minor + 1", "amount_minor - 1");
    }

    /** As the owner of the tables, with the triggers off. */
    private static void behind(String sql) throws SQLException {
        String url = ConfigProvider.getConfig().getValue("quarkus.datasource.jdbc.url", String.class);
        try (Connection owner = DriverManager.getConnection(url, "changeover_owner", "owner");
                var statement = owner.createStatement()) {
            for (String table : List.of("invoice_line", "invoice_tax", "invoice_issue")) {
                statement.execute("alter table " + table + " disable trigger user");
            }
            statement.execute(sql);
            for (String table : List.of("invoice_line", "invoice_tax", "invoice_issue")) {
                statement.execute("alter table " + table + " enable trigger user");
            }
        }
    }
}
