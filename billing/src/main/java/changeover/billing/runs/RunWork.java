package changeover.billing.runs;

import changeover.billing.documents.DocumentsToMake;
import changeover.billing.invoices.Invoices;
import changeover.billing.invoices.Issuing;
import changeover.billing.invoices.Rows;
import changeover.contracts.tenants.AtTheCounter;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Locales;
import changeover.contracts.words.Refusals;
import io.agroal.api.AgroalDataSource;
import io.quarkus.agroal.DataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.jboss.logging.Logger;

/**
 * Carries runs on: a batch is one transaction that issues its drafts and says that it did, so a run that was cut off
 * anywhere goes on without a double or a gap; papers are made after each commit, beside the next batch.
 */
@ApplicationScoped
public class RunWork {

    private static final Logger LOG = Logger.getLogger(RunWork.class);

    /** While one waits for its papers to reach the disk, the other draws. */
    private static final int DRAWING = 2;

    @Inject
    CurrentTenant current;

    @Inject
    AgroalDataSource database;

    @Inject
    @DataSource("lookup")
    AgroalDataSource lookup;

    @Inject
    Invoices invoices;

    @Inject
    DocumentsToMake papers;

    @Inject
    AtTheCounter counter;

    private record Open(UUID id, UUID startedBy) {}

    private record Turn(LocalDate day, int number, boolean last) {}

    /**
     * Every business with an open run in turn, a batch each, until there is nothing left to do. While somebody waits for a page, a
     * batch is issued and drawn by one hand, the next one after it, so that a processor stays free for them.
     */
    public void goOn() {
        List<UUID> open = new ArrayList<>(open());
        try (ExecutorService drawing =
                Executors.newFixedThreadPool(DRAWING, Thread.ofVirtual().factory())) {
            while (!open.isEmpty()) {
                open.removeIf(tenant -> !oneBatch(tenant, drawing));
            }
        }
    }

    /** A batch that failed is tried again at the next round; it does not hold up the others. */
    private boolean oneBatch(UUID tenant, ExecutorService drawing) {
        try {
            if (counter.isSomebody()) {
                return nextBatch(tenant);
            }
            boolean worked = issueNext(tenant);
            if (worked) {
                drawing.execute(() -> draw(tenant));
            }
            return worked;
        } catch (RuntimeException failure) {
            LOG.errorf(failure, "a batch of the billing run of %s failed", tenant);
            return false;
        }
    }

    /** Papers that could not be made now are made by their own timer. */
    private void draw(UUID tenant) {
        try {
            papers.makePending(tenant, Integer.MAX_VALUE);
        } catch (RuntimeException failure) {
            LOG.errorf(failure, "papers of the billing run of %s were not made", tenant);
        }
    }

    /** Issues the next batch of the business's open run and makes its papers; false when there was none to issue. */
    public boolean nextBatch(UUID tenant) {
        boolean worked = issueNext(tenant);
        if (worked) {
            draw(tenant);
        }
        return worked;
    }

    private boolean issueNext(UUID tenant) {
        Optional<Open> open = current.run(tenant, CurrentTenant.NOBODY, () -> openRun());
        if (open.isEmpty()) {
            return false;
        }
        Open run = open.get();
        return current.run(tenant, run.startedBy(), () -> issue(run.id()));
    }

    private List<UUID> open() {
        List<UUID> open = new ArrayList<>();
        try (Connection connection = lookup.getConnection();
                PreparedStatement ask = connection.prepareStatement("select * from businesses_with_open_runs()");
                ResultSet row = ask.executeQuery()) {
            while (row.next()) {
                open.add(row.getObject(1, UUID.class));
            }
            return open;
        } catch (SQLException cause) {
            throw new IllegalStateException("the open runs could not be read", cause);
        }
    }

    private Optional<Open> openRun() throws SQLException {
        try (Connection connection = database.getConnection();
                PreparedStatement select = connection.prepareStatement("""
                        select r.id, r.made_by from billing_run r where r.tenant_id = current_tenant() and not exists (
                          select 1 from billing_run_end e where e.tenant_id = r.tenant_id and e.run_id = r.id)
                        order by r.id limit 1""")) {
            ResultSet row = select.executeQuery();
            return row.next()
                    ? Optional.of(new Open(row.getObject(1, UUID.class), row.getObject(2, UUID.class)))
                    : Optional.empty();
        }
    }

    private boolean issue(UUID run) throws SQLException {
        try (Connection connection = database.getConnection()) {
            Optional<Turn> turn = turn(connection, run);
            if (turn.isEmpty()) {
                return false;
            }
            List<UUID> drafts = drafts(connection, run, turn.get().number());
            Issuing.Outcome outcome = invoices.issue(drafts, turn.get().day(), run);
            done(connection, run, turn.get(), outcome);
            return true;
        }
    }

    /** The run stays locked while a batch is issued: another machine lets it be, and whoever halts it waits. */
    private static Optional<Turn> turn(Connection connection, UUID run) throws SQLException {
        try (PreparedStatement lock = connection.prepareStatement("""
                        select day, batches from billing_run where tenant_id = current_tenant() and id = ?
                           for update skip locked""");
                PreparedStatement next = connection.prepareStatement("""
                        select (select count(*) from billing_run_end where tenant_id = current_tenant() and run_id = ?),
                               (select coalesce(max(number), 0) + 1 from billing_run_batch
                                 where tenant_id = current_tenant() and run_id = ?)""")) {
            lock.setObject(1, run);
            ResultSet locked = lock.executeQuery();
            if (!locked.next()) {
                return Optional.empty();
            }
            next.setObject(1, run);
            next.setObject(2, run);
            ResultSet row = next.executeQuery();
            row.next();
            int number = row.getInt(2);
            return row.getInt(1) > 0
                    ? Optional.empty()
                    : Optional.of(new Turn(locked.getObject(1, LocalDate.class), number, number == locked.getInt(2)));
        }
    }

    private static List<UUID> drafts(Connection connection, UUID run, int number) throws SQLException {
        List<UUID> drafts = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement("""
                select invoice_id from billing_run_draft
                 where tenant_id = current_tenant() and run_id = ? and number = ? order by position""")) {
            select.setObject(1, run);
            select.setInt(2, number);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                drafts.add(row.getObject(1, UUID.class));
            }
        }
        return drafts;
    }

    private static void done(Connection connection, UUID run, Turn turn, Issuing.Outcome outcome) throws SQLException {
        Rows refused =
                new Rows("billing_run_refusal", "run_id uuid, invoice_id uuid, code text, why_en text, why_fr text");
        outcome.refused()
                .forEach((draft, refusal) -> refused.add(
                        run,
                        draft,
                        refusal.code(),
                        Refusals.sentence(refusal, Locales.ENGLISH),
                        Refusals.sentence(refusal, Locales.FRENCH)));
        refused.insert(connection);
        Rows batch = new Rows("billing_run_batch", "run_id uuid, number int, issued int, joined int, refused int");
        batch.add(
                run,
                turn.number(),
                outcome.issued().size(),
                outcome.joined().size(),
                outcome.refused().size());
        batch.insert(connection);
        if (turn.last()) {
            Rows end = new Rows("billing_run_end", "run_id uuid, how text");
            end.add(run, "done");
            end.insert(connection);
        }
    }
}
