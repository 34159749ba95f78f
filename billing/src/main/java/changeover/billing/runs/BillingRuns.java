package changeover.billing.runs;

import changeover.billing.invoices.Rows;
import changeover.billing.payments.InvoiceLists;
import changeover.contracts.words.Refusal;
import io.agroal.api.AgroalDataSource;
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

/** The billing runs of the business: begun by a person, carried on by the timer, halted by a person; one at a time. */
@ApplicationScoped
public class BillingRuns {

    private static final int RECENT = 50;

    @Inject
    AgroalDataSource database;

    @Inject
    InvoiceLists lists;

    @Inject
    RunDays days;

    /**
     * Writes down all drafts that may be issued on the day, to be issued by the timer.
     *
     * @throws changeover.contracts.words.Refused when another run is going on, there is nothing to issue, or the day is
     *     before the last invoice's or still to come
     */
    public UUID start(LocalDate day) {
        days.check(day);
        try (Connection connection = database.getConnection()) {
            oneAtATime(connection);
            Batches batches = Batches.of(ready(connection, lists.ready(day)));
            if (batches.drafts() == 0) {
                throw Refusal.of("run.nothing").at("day").thrown();
            }
            UUID run = begin(connection, day, batches);
            Rows drafts = new Rows("billing_run_draft", "run_id uuid, number int, position int, invoice_id uuid");
            int number = 0;
            for (List<UUID> batch : batches.batches()) {
                number++;
                for (int at = 0; at < batch.size(); at++) {
                    drafts.add(run, number, at + 1, batch.get(at));
                }
            }
            drafts.insert(connection);
            return run;
        } catch (SQLException cause) {
            throw new IllegalStateException("the run could not be begun", cause);
        }
    }

    private static void oneAtATime(Connection connection) throws SQLException {
        try (PreparedStatement lock = connection.prepareStatement(
                        "select pg_advisory_xact_lock(hashtextextended('billing run ' || current_tenant(), 7))");
                PreparedStatement open = connection.prepareStatement("""
                        select 1 from billing_run r where tenant_id = current_tenant() and not exists (
                          select 1 from billing_run_end e where e.tenant_id = r.tenant_id and e.run_id = r.id)""")) {
            lock.execute();
            if (open.executeQuery().next()) {
                throw Refusal.of("run.going-on").thrown();
            }
        }
    }

    private static List<Batches.Ready> ready(Connection connection, List<UUID> ids) throws SQLException {
        List<Batches.Ready> ready = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement("""
                select i.id, case when c.invoices = 'one' then c.id end
                  from unnest(?::uuid[]) with ordinality as d(id, position)
                  join invoice i on i.tenant_id = current_tenant() and i.id = d.id
                  left join customer c on c.tenant_id = i.tenant_id and c.id = i.customer_id
                 order by d.position""")) {
            select.setArray(1, connection.createArrayOf("uuid", ids.toArray()));
            ResultSet row = select.executeQuery();
            while (row.next()) {
                ready.add(new Batches.Ready(row.getObject(1, UUID.class), row.getObject(2, UUID.class)));
            }
        }
        return ready;
    }

    private static UUID begin(Connection connection, LocalDate day, Batches batches) throws SQLException {
        try (PreparedStatement insert = connection.prepareStatement(
                "insert into billing_run (day, drafts, batches) values (?, ?, ?) returning id")) {
            insert.setObject(1, day);
            insert.setInt(2, batches.drafts());
            insert.setInt(3, batches.batches().size());
            ResultSet row = insert.executeQuery();
            row.next();
            return row.getObject(1, UUID.class);
        }
    }

    /**
     * Ends a run after the batch in hand; what it issued stays issued, the rest stay drafts.
     *
     * @throws changeover.contracts.words.Refused when it has ended already
     */
    public void halt(UUID run) {
        try (Connection connection = database.getConnection();
                PreparedStatement lock = connection.prepareStatement(
                        "select 1 from billing_run where tenant_id = current_tenant() and id = ? for update");
                PreparedStatement end = connection.prepareStatement("""
                        insert into billing_run_end (run_id, how) values (?, 'halted')
                        on conflict on constraint a_run_ends_once do nothing""")) {
            lock.setObject(1, run);
            lock.execute();
            end.setObject(1, run);
            if (end.executeUpdate() == 0) {
                throw Refusal.of("run.ended").thrown();
            }
        } catch (SQLException cause) {
            throw new IllegalStateException("the run could not be halted", cause);
        }
    }

    /** The runs, the newest first. */
    public List<BillingRun> recent() {
        return RunRows.read(database, "order by r.id desc limit ?::int", RECENT);
    }

    public Optional<BillingRun> find(UUID run) {
        return RunRows.read(database, "and r.id = ?::uuid", run).stream().findFirst();
    }

    /** What it issued, in the order of the numbers. */
    public List<RunDocument> issued(UUID run, int skip, int count) {
        return RunRows.issued(database, run, skip, count);
    }

    /** What it left, and why. */
    public List<RunLeft> left(UUID run) {
        return left(run, 0, Integer.MAX_VALUE);
    }

    /** A page of what it left. */
    public List<RunLeft> left(UUID run, int skip, int count) {
        return RunRows.left(database, run, skip, count);
    }
}
