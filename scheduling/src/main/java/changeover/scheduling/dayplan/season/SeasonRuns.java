package changeover.scheduling.dayplan.season;

import changeover.contracts.words.Refusal;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Array;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/**
 * Seasons planned in the background for the current business: asked by a person, carried on by the timer, halted by a
 * person. Asking changes no visit.
 */
@ApplicationScoped
public class SeasonRuns {

    private static final int RECENT = 12;

    @Inject
    AgroalDataSource database;

    @Inject
    SeasonFacts facts;

    /** Writes the question down, to be worked on by the timer. Refused while another season is being planned. */
    public UUID start(SeasonQuestion asked) {
        int visits = waiting(asked);
        try (Connection connection = database.getConnection()) {
            oneAtATime(connection);
            if (visits == 0) {
                throw Refusal.of("season-run.nothing-waits").at("season").thrown();
            }
            return write(connection, asked, visits);
        } catch (SQLException cause) {
            throw new IllegalStateException("the season could not be asked for", cause);
        }
    }

    /** Whether any visit of it waits for a day. */
    public boolean hasWork(SeasonQuestion asked) {
        return waiting(asked) > 0;
    }

    private int waiting(SeasonQuestion asked) {
        return facts.wanted(asked, new PlacesOnMap()).size();
    }

    private static void oneAtATime(Connection connection) throws SQLException {
        try (PreparedStatement lock = connection.prepareStatement(
                        "select pg_advisory_xact_lock(hashtextextended('season run ' || current_tenant(), 7))");
                PreparedStatement open = connection.prepareStatement("""
                        select 1 from season_run r where tenant_id = current_tenant() and not exists (
                          select 1 from season_run_end e where e.tenant_id = r.tenant_id and e.run_id = r.id)""")) {
            lock.execute();
            if (open.executeQuery().next()) {
                throw Refusal.of("season-run.going-on").thrown();
            }
        }
    }

    private static UUID write(Connection connection, SeasonQuestion asked, int visits) throws SQLException {
        try (PreparedStatement insert = connection.prepareStatement("""
                insert into season_run (season_id, from_day, until_day, first_day, without, more, more_from, more_until,
                  more_tickets, idle_weekdays, visits) values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) returning id""")) {
            var more = asked.moreDays();
            insert.setObject(1, asked.season());
            insert.setObject(2, asked.days().from());
            insert.setObject(3, asked.days().until());
            insert.setObject(4, asked.first());
            insert.setArray(5, connection.createArrayOf("uuid", asked.without().toArray()));
            insert.setInt(6, asked.more());
            insert.setObject(7, more == null ? null : more.from());
            insert.setObject(8, more == null ? null : more.until());
            insert.setArray(
                    9,
                    connection.createArrayOf(
                            "text", asked.moreTickets().stream().sorted().toArray()));
            insert.setArray(10, weekdays(connection, asked.idle()));
            insert.setInt(11, visits);
            ResultSet row = insert.executeQuery();
            row.next();
            return row.getObject(1, UUID.class);
        }
    }

    private static Array weekdays(Connection connection, Set<DayOfWeek> days) throws SQLException {
        return connection.createArrayOf(
                "int", days.stream().sorted().map(DayOfWeek::getValue).toArray());
    }

    /** Ends the search as soon as it can be; what was found so far is the answer. */
    public void halt(UUID run) {
        try (Connection connection = database.getConnection();
                PreparedStatement halt = connection.prepareStatement("""
                        insert into season_run_halt (run_id) select ? where not exists (
                          select 1 from season_run_end where tenant_id = current_tenant() and run_id = ?)
                        on conflict on constraint a_season_run_is_halted_once do nothing""")) {
            halt.setObject(1, run);
            halt.setObject(2, run);
            if (halt.executeUpdate() == 0) {
                throw Refusal.of("season-run.ended").thrown();
            }
        } catch (SQLException cause) {
            throw new IllegalStateException("the run could not be halted", cause);
        }
    }

    /** The runs, the newest first. */
    public List<SeasonRun> recent() {
        return SeasonRunRows.read(database, "order by r.id desc limit ?::int", RECENT);
    }

    public Optional<SeasonRun> find(UUID run) {
        return SeasonRunRows.read(database, "and r.id = ?::uuid", run).stream().findFirst();
    }
}
