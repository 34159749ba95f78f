package changeover.scheduling.dayplan.season;

import changeover.contracts.tenants.CurrentTenant;
import changeover.scheduling.dayplan.TravelAtHand;
import changeover.scheduling.dayplan.routes.Travel;
import io.agroal.api.AgroalDataSource;
import io.quarkus.agroal.DataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jboss.logging.Logger;

/**
 * Carries the search for seasons on, a few seconds of each business in turn. The best answer so far is written down on the
 * way, so that a machine that died is followed by one that goes on from there; the end is written once, whoever gets there.
 */
@ApplicationScoped
public class SeasonWork {

    private static final Logger LOG = Logger.getLogger(SeasonWork.class);
    private static final long A_TURN = Duration.ofSeconds(3).toNanos();

    /** Visits times rounds between two looks at the clock. */
    private static final int A_LOOK = 100_000;

    @Inject
    CurrentTenant current;

    @Inject
    AgroalDataSource database;

    @Inject
    @DataSource("lookup")
    AgroalDataSource lookup;

    @Inject
    SeasonCases cases;

    @Inject
    TravelAtHand travel;

    @Inject
    SeasonAnswers answers;

    private final SearchesAtHand searches = new SearchesAtHand();

    /** Every business with an open question in turn, until none is left. */
    public void goOn() {
        List<UUID> open = new ArrayList<>(open());
        while (!open.isEmpty()) {
            open.removeIf(tenant -> !oneTurn(tenant));
        }
    }

    /** A turn that failed is tried again at the next round; it does not hold up the others. */
    private boolean oneTurn(UUID tenant) {
        try {
            return turn(tenant);
        } catch (RuntimeException failure) {
            LOG.errorf(failure, "a turn of the season of %s failed", tenant);
            searches.forget(tenant);
            return false;
        }
    }

    /** Searches a little further for the business's open question; false when there was none. */
    public boolean turn(UUID tenant) {
        Optional<SeasonRun> open = current.run(tenant, CurrentTenant.NOBODY, this::openRun);
        if (open.isEmpty()) {
            return false;
        }
        SeasonRun run = open.get();
        if (!searches.has(tenant, run.id())) {
            List<Travel.Place> places = current.run(tenant, run.startedBy(), () -> cases.places(run.question()));
            travel.prepare(places);
        }
        Search search = searches.of(tenant, run.id(), () -> current.run(tenant, run.startedBy(), () -> begun(run)));
        int few = Math.clamp(A_LOOK / Math.max(1, run.visits()), 5, 500);
        long until = System.nanoTime() + A_TURN;
        while (!search.isOver() && System.nanoTime() < until) {
            search.search(few);
        }
        boolean over = current.run(tenant, run.startedBy(), () -> answers.write(run, search));
        if (over) {
            searches.forget(tenant);
        }
        return true;
    }

    /** As after a restart: nothing is known but what was written down. */
    void forget() {
        searches.forget();
    }

    private Search begun(SeasonRun run) throws SQLException {
        Search search = new Search(cases.of(run.question()));
        try (Connection connection = database.getConnection();
                PreparedStatement ask = connection.prepareStatement("""
                        select plan, rounds from season_run_step where tenant_id = current_tenant() and run_id = ?
                         order by rounds desc limit 1""")) {
            ask.setObject(1, run.id());
            ResultSet row = ask.executeQuery();
            if (row.next()) {
                search.goOn(PlanText.read(row.getString(1)), row.getInt(2));
            } else {
                search.begin();
            }
            return search;
        }
    }

    private Optional<SeasonRun> openRun() {
        return SeasonRunRows.read(database, "and e.id is null order by r.id limit ?::int", 1).stream()
                .findFirst();
    }

    private List<UUID> open() {
        List<UUID> open = new ArrayList<>();
        try (Connection connection = lookup.getConnection();
                PreparedStatement ask = connection.prepareStatement("select * from businesses_with_open_seasons()");
                ResultSet row = ask.executeQuery()) {
            while (row.next()) {
                open.add(row.getObject(1, UUID.class));
            }
            return open;
        } catch (SQLException cause) {
            throw new IllegalStateException("the open seasons could not be read", cause);
        }
    }
}
