package changeover.scheduling.dayplan.season;

import changeover.contracts.tenants.ManyRows;
import changeover.scheduling.dayplan.Minutes;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Answers as they are written down: on the way the best so far, at the end by visit, with what would keep the rest. */
@ApplicationScoped
class SeasonAnswers {

    @Inject
    AgroalDataSource database;

    /** Writes how far a search is, and its answer where it is over or halted; says whether the run has ended. */
    boolean write(SeasonRun run, Search search) throws SQLException {
        try (Connection connection = database.getConnection()) {
            boolean halted = isThere(connection, "season_run_halt", run.id());
            if (isThere(connection, "season_run_end", run.id())) {
                return true;
            }
            step(connection, run, search);
            if (!search.isOver() && !halted) {
                return false;
            }
            SeasonAnswer answer = search.answer();
            String roads = search.asked().roads().by().code();
            if (end(connection, run, search.isOver() ? "done" : "halted", answer, roads)) {
                visits(connection, run, answer);
                more(connection, run, answer);
                weeks(connection, run, search.asked());
            }
            return true;
        }
    }

    private static boolean isThere(Connection connection, String table, UUID run) throws SQLException {
        try (PreparedStatement ask = connection.prepareStatement(
                "select 1 from " + table + " where tenant_id = current_tenant() and run_id = ?")) {
            ask.setObject(1, run);
            return ask.executeQuery().next();
        }
    }

    private static void step(Connection connection, SeasonRun run, Search search) throws SQLException {
        try (PreparedStatement insert = connection.prepareStatement("""
                insert into season_run_step (run_id, rounds, all_rounds, without_day, plan) values (?, ?, ?, ?, ?)
                on conflict on constraint a_run_is_at_a_round_once do nothing""")) {
            insert.setObject(1, run.id());
            insert.setInt(2, search.rounds());
            insert.setInt(3, search.all());
            insert.setInt(4, search.without());
            insert.setString(5, PlanText.of(search.kept()));
            insert.executeUpdate();
        }
    }

    private static boolean end(Connection connection, SeasonRun run, String how, SeasonAnswer answer, String roads)
            throws SQLException {
        try (PreparedStatement insert = connection.prepareStatement("""
                insert into season_run_end (run_id, how, driving, roads) values (?, ?, ?, ?)
                on conflict on constraint a_season_run_ends_once do nothing""")) {
            insert.setObject(1, run.id());
            insert.setString(2, how);
            insert.setInt(3, Math.toIntExact(answer.driving()));
            insert.setString(4, roads);
            return insert.executeUpdate() > 0;
        }
    }

    /** Visits that are there no more since the question was asked are left out. */
    private static void visits(Connection connection, SeasonRun run, SeasonAnswer answer) throws SQLException {
        var rows = ManyRows.into(
                "season_run_visit",
                "run_id uuid, visit_id uuid, technician_id uuid, second_id uuid, tried boolean, day date, starts time,"
                        + " ends time, road int, why text");
        answer.kept()
                .forEach(one -> rows.add(
                        run.id(),
                        one.visit(),
                        one.technician(),
                        one.second(),
                        one.tried(),
                        one.day(),
                        Minutes.time(one.starts()),
                        Minutes.time(one.ends()),
                        one.road(),
                        null));
        answer.unkept()
                .forEach(one -> rows.add(
                        run.id(),
                        one.visit(),
                        null,
                        null,
                        false,
                        null,
                        null,
                        null,
                        null,
                        one.why().code()));
        rows.store(connection);
    }

    private static void more(Connection connection, SeasonRun run, SeasonAnswer answer) throws SQLException {
        for (SeasonAnswer.MoreDay day : answer.moreDays()) {
            more(connection, run, day.day(), day.technicians(), day.tickets(), day.visits());
        }
        for (SeasonAnswer.MoreTickets tickets : answer.moreTickets()) {
            more(connection, run, null, 1, tickets.tickets(), tickets.visits());
        }
    }

    private static void more(
            Connection connection,
            SeasonRun run,
            @Nullable LocalDate day,
            int technicians,
            Set<String> tickets,
            Collection<UUID> visits)
            throws SQLException {
        try (PreparedStatement insert = connection.prepareStatement(
                "insert into season_run_more (run_id, day, technicians, tickets, visits) values (?, ?, ?, ?, ?)")) {
            insert.setObject(1, run.id());
            insert.setObject(2, day);
            insert.setInt(3, technicians);
            insert.setArray(
                    4,
                    connection.createArrayOf("text", tickets.stream().sorted().toArray()));
            insert.setArray(5, connection.createArrayOf("uuid", visits.toArray()));
            insert.executeUpdate();
        }
    }

    private static void weeks(Connection connection, SeasonRun run, SeasonCase asked) throws SQLException {
        Map<LocalDate, int[]> weeks = new TreeMap<>();
        for (Shift shift : asked.shifts()) {
            int[] week = weeks.computeIfAbsent(Figures.monday(shift.day()), _ -> new int[2]);
            week[0] += shift.until() - shift.from();
            week[1] += shift.booked().stream()
                    .mapToInt(one -> one.ends() - one.starts())
                    .sum();
        }
        var rows = ManyRows.into("season_run_week", "run_id uuid, monday date, minutes int, booked int");
        weeks.forEach((monday, week) -> rows.add(run.id(), monday, week[0], week[1]));
        rows.store(connection);
    }
}
