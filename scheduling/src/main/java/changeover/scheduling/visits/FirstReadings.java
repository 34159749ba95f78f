package changeover.scheduling.visits;

import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.Task;
import changeover.contracts.takeover.TakeOver;
import changeover.contracts.tenants.Ids;
import changeover.contracts.tenants.ManyRows;
import changeover.contracts.words.Wording;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * When a machine's work was last done and nobody knows it, the home's first visit reads it there, which takes its own
 * minutes. Once it is known the visit is shorter again.
 */
@ApplicationScoped
class FirstReadings {

    static final String READ = "read-last-time";

    private static final String OPEN = """
            not exists (select from visit_ending e where e.tenant_id = v.tenant_id and e.visit_id = v.id)
              and not exists (select from operation o where o.tenant_id = v.tenant_id and o.visit_id = v.id)""";

    private static final String TO_READ = """
            select u.equipment_id, string_agg(u.task_code, E'\\n' order by u.task_code), v.id, v.window_from, v.window_until, v.last
              from last_time_unread u
              join lateral (
                select v.id, v.window_from, v.window_until,
                       (select coalesce(max(t.position), 0) from visit_task t
                         where t.tenant_id = v.tenant_id and t.visit_id = v.id) as last
                  from visit v left join appointment a on a.tenant_id = v.tenant_id and a.visit_id = v.id
                 where v.tenant_id = u.tenant_id and v.home_id = u.home_id and v.kind = 'plan' and %s
                   and %s
                 order by coalesce(a.day, v.window_from), v.window_until, v.id limit 1) v on true
             where u.home_id = any (?::uuid[])
               and not exists (select from unit_history h where h.tenant_id = u.tenant_id
                     and h.equipment_id = u.equipment_id and h.task_code = u.task_code)
               and not exists (
                 select from visit_task k left join visit_ending e on e.tenant_id = k.tenant_id and e.visit_id = k.visit_id
                  where k.tenant_id = u.tenant_id and k.equipment_id = u.equipment_id and k.task_code = '%s'
                    and (e.id is null or e.how = 'closed' and e.made_at > u.made_at))
             group by u.equipment_id, v.id, v.window_from, v.window_until, v.last
             order by v.id, u.equipment_id""".formatted(OPEN, GivenOut.NOT, READ);

    private static final String TAKEN_OFF = """
            delete from visit_task t using visit v
             where v.tenant_id = t.tenant_id and v.id = t.visit_id and v.home_id = any (?::uuid[])
               and t.task_code = ? and %s
            returning t.visit_id""".formatted(OPEN);

    private static final String MINUTES = """
            update visit v set minutes = (select coalesce(sum(t.minutes), 0) from visit_task t
                where t.tenant_id = v.tenant_id and t.visit_id = v.id)
             where v.kind = 'plan' and v.id = any (?::uuid[])""";

    private static final String COUNTED = """
            update year_planned y set tasks = (select count(*) from visit v
                join visit_task t on t.tenant_id = v.tenant_id and t.visit_id = v.id
               where v.tenant_id = y.tenant_id and v.agreement_id = y.agreement_id and v.kind = 'plan')
             where y.agreement_id in (select agreement_id from visit where id = any (?::uuid[]))""";

    @Inject
    OwnCatalogue trade;

    @Inject
    TakeOver takeOver;

    @Inject
    AgroalDataSource datasource;

    /** Takes the readings of these homes off their visits, for the year to be laid out without them. */
    void takeOff(Collection<UUID> homes) {
        try (Connection connection = datasource.getConnection();
                PreparedStatement delete = connection.prepareStatement(TAKEN_OFF)) {
            delete.setArray(1, ids(connection, homes));
            delete.setString(2, READ);
            Set<UUID> visits = new HashSet<>();
            try (ResultSet row = delete.executeQuery()) {
                while (row.next()) {
                    visits.add(row.getObject(1, UUID.class));
                }
            }
            count(connection, visits);
        } catch (SQLException cause) {
            throw new IllegalStateException("the readings could not be taken off", cause);
        }
    }

    /**
     * Puts what is still to be read in these homes onto the first visit of each that is ours and nobody began. What waits
     * on a visit, or was read on one since it was told, is put on no other.
     */
    void putOn(Collection<UUID> homes) {
        try (Connection connection = datasource.getConnection();
                PreparedStatement ask = connection.prepareStatement(TO_READ)) {
            ask.setArray(1, ids(connection, homes));
            var lines = ManyRows.into(
                    "visit_task",
                    "id uuid, visit_id uuid, equipment_id uuid, task_code text, wording_en text, wording_fr text, who text,"
                            + " minutes int, due_from date, due_until date, reason_en text, reason_fr text, basis text, position int");
            Set<UUID> visits = new HashSet<>();
            Catalogue catalogue = trade.catalogue();
            Task task = catalogue.task(READ);
            int minutes = takeOver.readingMinutes();
            try (ResultSet row = ask.executeQuery()) {
                while (row.next()) {
                    UUID visit = row.getObject(3, UUID.class);
                    visits.add(visit);
                    Wording why = why(row.getString(2), catalogue);
                    lines.add(
                            Ids.next(),
                            visit,
                            row.getObject(1, UUID.class),
                            READ,
                            task.wording().en(),
                            task.wording().fr(),
                            task.who().code(),
                            minutes,
                            row.getObject(4, LocalDate.class),
                            row.getObject(5, LocalDate.class),
                            why.en(),
                            why.fr(),
                            task.basis(),
                            row.getInt(6) + 1);
                }
            }
            lines.store(connection);
            count(connection, visits);
        } catch (SQLException cause) {
            throw new IllegalStateException("what is to be read could not be put on its visit", cause);
        }
    }

    private static Wording why(String codes, Catalogue catalogue) {
        List<Wording> tasks = Stream.of(codes.split("\n"))
                .flatMap(code -> catalogue.findTask(code).stream())
                .map(Task::wording)
                .toList();
        return new Wording(
                "When this was last done is not known: "
                        + tasks.stream().map(Wording::en).collect(Collectors.joining("; ")) + ".",
                "On ne sait pas quand ceci a été fait la dernière fois\u00a0: "
                        + tasks.stream().map(Wording::fr).collect(Collectors.joining("; ")) + ".");
    }

    private static void count(Connection connection, Collection<UUID> visits) throws SQLException {
        if (visits.isEmpty()) {
            return;
        }
        for (String sql : List.of(MINUTES, COUNTED)) {
            try (PreparedStatement update = connection.prepareStatement(sql)) {
                update.setArray(1, ids(connection, visits));
                update.executeUpdate();
            }
        }
    }

    private static java.sql.Array ids(Connection connection, Collection<UUID> ids) throws SQLException {
        return connection.createArrayOf("uuid", ids.toArray());
    }
}
