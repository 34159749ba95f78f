package changeover.scheduling.dayplan.season;

import changeover.contracts.calendar.Window;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The answer of a run, as it was written down. */
@ApplicationScoped
public class SeasonRunReading {

    private static final String VISITS = """
            select r.visit_id, v.home_id, concat_ws(', ', h.street, h.unit_label, h.city) as home, v.window_from,
              v.window_until, v.minutes, r.technician_id, m.name as technician, s.name as second, r.tried, r.day, r.starts,
              r.ends, r.road, r.why, exists (select 1 from appointment a
                where a.tenant_id = r.tenant_id and a.visit_id = r.visit_id) as given
            from season_run_visit r
            join visit v on v.tenant_id = r.tenant_id and v.id = r.visit_id
            join home h on h.tenant_id = v.tenant_id and h.id = v.home_id
            left join membership m on m.tenant_id = r.tenant_id and m.person_id = r.technician_id
            left join membership s on s.tenant_id = r.tenant_id and s.person_id = r.second_id
            where r.tenant_id = current_tenant() and r.run_id = :run
            """;

    /**
     * A visit of the answer.
     *
     * @param last the last day of its window
     * @param tried whether its day is one of somebody who is only thought of
     * @param road minutes of driving to it
     * @param why why it has no day, as {@link SeasonAnswer.Why} names it; null where it has one
     * @param given whether it has its day by now
     */
    public record Row(
            UUID visit,
            UUID homeId,
            String home,
            LocalDate first,
            LocalDate last,
            int minutes,
            @Nullable UUID technicianId,
            @Nullable String technician,
            @Nullable String second,
            boolean tried,
            @Nullable LocalDate day,
            @Nullable LocalTime starts,
            @Nullable LocalTime ends,
            int road,
            @Nullable String why,
            boolean given) {}

    /** What would keep some of the rest. @param day null for a ticket more in the crew as it stands */
    public record More(@Nullable LocalDate day, int technicians, Set<String> tickets, Set<UUID> visits) {}

    /** A week of the crew that was asked about, in minutes. */
    public record Week(LocalDate monday, int holds, int booked, int given) {}

    @Inject
    EntityManager rows;

    @Inject
    AgroalDataSource database;

    /** What got a day in a week, by day, technician and hour. */
    public List<Row> kept(UUID run, Window week) {
        return read(rows.createNativeQuery(
                        VISITS
                                + " and r.day >= :from and r.day < :until order by r.day, m.name, r.technician_id, r.starts",
                        Tuple.class)
                .setParameter("run", run)
                .setParameter("from", week.from())
                .setParameter("until", week.until()));
    }

    /** What got none, the most urgent first. */
    public List<Row> unkept(UUID run, int count) {
        return read(rows.createNativeQuery(
                        VISITS + " and r.day is null order by v.window_until, h.street, r.visit_id", Tuple.class)
                .setParameter("run", run)
                .setMaxResults(count));
    }

    @SuppressWarnings("unchecked")
    private static List<Row> read(Query ask) {
        List<Tuple> found = ask.getResultList();
        return found.stream().map(SeasonRunReading::row).toList();
    }

    private static Row row(Tuple row) {
        Integer road = row.get("road", Integer.class);
        return new Row(
                row.get("visit_id", UUID.class),
                row.get("home_id", UUID.class),
                row.get("home", String.class),
                row.get("window_from", LocalDate.class),
                row.get("window_until", LocalDate.class).minusDays(1),
                row.get("minutes", Integer.class),
                row.get("technician_id", UUID.class),
                row.get("technician", String.class),
                row.get("second", String.class),
                row.get("tried", Boolean.class),
                row.get("day", LocalDate.class),
                row.get("starts", LocalTime.class),
                row.get("ends", LocalTime.class),
                road == null ? 0 : road,
                row.get("why", String.class),
                row.get("given", Boolean.class));
    }

    /** How many of its visits were late already: their windows were over before the first day that could be given. */
    public int late(UUID run) {
        return ((Number) rows.createNativeQuery("""
                                select count(*) from season_run_visit r
                                  join season_run q on q.tenant_id = r.tenant_id and q.id = r.run_id
                                  join visit v on v.tenant_id = r.tenant_id and v.id = r.visit_id
                                 where r.run_id = :run and r.day is not null and v.window_until <= q.first_day""").setParameter("run", run).getSingleResult()).intValue();
    }

    /** Days first, in their order; then the tickets. */
    public List<More> more(UUID run) {
        List<More> all = new ArrayList<>();
        read(
                "select day, technicians, tickets, visits from season_run_more where tenant_id = current_tenant()"
                        + " and run_id = ? order by day, id",
                run,
                row -> all.add(new More(
                        row.getObject(1, LocalDate.class),
                        row.getInt(2),
                        SeasonRunRows.set(row.getArray(3), String.class),
                        SeasonRunRows.set(row.getArray(4), UUID.class))));
        return all;
    }

    public List<Week> weeks(UUID run) {
        List<Week> all = new ArrayList<>();
        read(
                """
                select w.monday, w.minutes, w.booked, coalesce((
                  select sum(extract(epoch from v.ends - v.starts) / 60 * (1 + (v.second_id is not null)::int))
                    from season_run_visit v where v.tenant_id = w.tenant_id and v.run_id = w.run_id
                     and v.day >= w.monday and v.day < w.monday + 7), 0)::int
                from season_run_week w where w.tenant_id = current_tenant() and w.run_id = ? order by w.monday""",
                run,
                row -> all.add(
                        new Week(row.getObject(1, LocalDate.class), row.getInt(2), row.getInt(3), row.getInt(4))));
        return all;
    }

    private interface Each {
        void row(ResultSet row) throws SQLException;
    }

    private void read(String sql, UUID run, Each each) {
        try (Connection connection = database.getConnection();
                PreparedStatement ask = connection.prepareStatement(sql)) {
            ask.setObject(1, run);
            ResultSet row = ask.executeQuery();
            while (row.next()) {
                each.row(row);
            }
        } catch (SQLException cause) {
            throw new IllegalStateException("the answer of a season could not be read", cause);
        }
    }
}
