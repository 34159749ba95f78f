package changeover.scheduling.dayplan.season;

import changeover.contracts.calendar.Window;
import io.agroal.api.AgroalDataSource;
import java.sql.Array;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Runs read back from their rows. */
final class SeasonRunRows {

    private static final String READ = """
            select r.id, r.season_id, r.from_day, r.until_day, r.first_day, r.without, r.more, r.more_from, r.more_until,
              r.more_tickets, r.idle_weekdays, r.visits, r.made_by, r.made_at, e.how, e.made_at as ended_at, e.driving,
              coalesce(e.roads, 'crow') as roads,
              coalesce(s.rounds, 0) as rounds, coalesce(s.all_rounds, 0) as all_rounds,
              coalesce(s.without_day, r.visits) as without_day,
              coalesce((select sum(a.visits) from season_run_acceptance a
                where a.tenant_id = r.tenant_id and a.run_id = r.id), 0) as accepted
            from season_run r
            left join season_run_end e on e.tenant_id = r.tenant_id and e.run_id = r.id
            left join lateral (select rounds, all_rounds, without_day from season_run_step s
              where s.tenant_id = r.tenant_id and s.run_id = r.id order by rounds desc limit 1) s on true
            where r.tenant_id = current_tenant()
            """;

    private SeasonRunRows() {}

    static List<SeasonRun> read(AgroalDataSource database, String rest, Object value) {
        try (Connection connection = database.getConnection();
                PreparedStatement ask = connection.prepareStatement(READ + rest)) {
            ask.setObject(1, value);
            ResultSet row = ask.executeQuery();
            List<SeasonRun> runs = new ArrayList<>();
            while (row.next()) {
                runs.add(run(row));
            }
            return runs;
        } catch (SQLException cause) {
            throw new IllegalStateException("the seasons that were asked for could not be read", cause);
        }
    }

    private static SeasonRun run(ResultSet row) throws SQLException {
        String how = row.getString("how");
        OffsetDateTime ended = row.getObject("ended_at", OffsetDateTime.class);
        return new SeasonRun(
                row.getObject("id", UUID.class),
                question(row),
                row.getObject("made_by", UUID.class),
                row.getObject("made_at", OffsetDateTime.class).toInstant(),
                how == null ? SeasonRun.State.RUNNING : SeasonRun.State.valueOf(how.toUpperCase(java.util.Locale.ROOT)),
                instant(ended),
                row.getInt("visits"),
                row.getInt("rounds"),
                row.getInt("all_rounds"),
                row.getInt("without_day"),
                row.getInt("driving"),
                row.getString("roads"),
                row.getInt("accepted"));
    }

    private static @Nullable Instant instant(@Nullable OffsetDateTime at) {
        return at == null ? null : at.toInstant();
    }

    private static SeasonQuestion question(ResultSet row) throws SQLException {
        int more = row.getInt("more");
        return new SeasonQuestion(
                row.getObject("season_id", UUID.class),
                window(row, "from_day", "until_day"),
                row.getObject("first_day", LocalDate.class),
                set(row.getArray("without"), UUID.class),
                more,
                more == 0 ? null : window(row, "more_from", "more_until"),
                set(row.getArray("more_tickets"), String.class),
                set(row.getArray("idle_weekdays"), Integer.class).stream()
                        .map(DayOfWeek::of)
                        .collect(Collectors.toSet()));
    }

    private static Window window(ResultSet row, String from, String until) throws SQLException {
        return new Window(row.getObject(from, LocalDate.class), row.getObject(until, LocalDate.class));
    }

    static <T> Set<T> set(Array array, Class<T> of) throws SQLException {
        return Arrays.stream((Object[]) array.getArray()).map(of::cast).collect(Collectors.toSet());
    }
}
