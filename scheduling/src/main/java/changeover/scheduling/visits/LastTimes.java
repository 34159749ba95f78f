package changeover.scheduling.visits;

import changeover.contracts.takeover.TakeOver;
import changeover.contracts.tenants.ManyRows;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * When each task was last done on each machine before the take-over, so that the first season counts from it. What nobody
 * knows is read at the first visit.
 */
@ApplicationScoped
public class LastTimes {

    private static final String KNOWN = """
            select equipment_id, task_code, max(day), bool_or(unread) from (
              select equipment_id, task_code, day, false as unread from unit_history
               where home_id = any (?::uuid[]) and equipment_id is not null
              union all
              select equipment_id, task_code, null, true from last_time_unread where home_id = any (?::uuid[])) k
             group by 1, 2""";

    /** What our own visits did stays; what was told of the time before is told anew. */
    private static final String TOLD_BEFORE = """
            delete from unit_history h using unnest(?::uuid[], ?::text[]) as t (unit, task)
             where h.equipment_id = t.unit and h.task_code = t.task and h.visit_id is null and h.day <= ?""";

    private static final String NO_LONGER_UNREAD = """
            delete from last_time_unread u using unnest(?::uuid[], ?::text[]) as t (unit, task)
             where u.equipment_id = t.unit and u.task_code = t.task""";

    /** Those that were visited since come first: the day can be written now. */
    private static final String UNREAD = """
            select u.home_id, concat_ws(', ', h.street, h.unit_label, h.city), q.name, count(distinct u.task_code), max(e.day)
              from last_time_unread u
              join home h on h.tenant_id = u.tenant_id and h.id = u.home_id
              join equipment q on q.tenant_id = u.tenant_id and q.id = u.equipment_id and q.ended_on is null
              left join (visit_task t join visit_ending e on e.tenant_id = t.tenant_id and e.visit_id = t.visit_id
                           and e.how = 'closed')
                on t.tenant_id = u.tenant_id and t.equipment_id = u.equipment_id and t.task_code = 'read-last-time'
                  and e.made_at > u.made_at
             where not exists (select from unit_history d where d.tenant_id = u.tenant_id
                   and d.equipment_id = u.equipment_id and d.task_code = u.task_code)
             group by u.home_id, h.street, h.unit_label, h.city, q.id, q.name
             order by max(e.day) nulls last, 2, 3""";

    @Inject
    AgroalDataSource datasource;

    @Inject
    TakeOver takeOver;

    @Inject
    FirstReadings readings;

    @Inject
    YearsToldAgain years;

    /** A task on a machine. */
    public record Of(UUID unit, String task) {}

    /**
     * @param day null where nobody knows it
     * @param unread whether it is to be read at the first visit
     */
    public record Known(@Nullable LocalDate day, boolean unread) {

        public static final Known NOTHING = new Known(null, false);
    }

    /** @param day null: to be read at the first visit */
    public record Told(
            UUID home, UUID unit, String task, @Nullable LocalDate day) {

        public Of of() {
            return new Of(unit, task);
        }
    }

    /**
     * A machine on which something is still to be read.
     *
     * @param visited when the visit that was to read it was closed; null while it was not
     */
    public record Unread(
            UUID home,
            String line,
            String machine,
            long tasks,
            @Nullable LocalDate visited) {}

    /** Of every machine once. */
    public List<Unread> unread() {
        List<Unread> unread = new ArrayList<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement ask = connection.prepareStatement(UNREAD);
                ResultSet row = ask.executeQuery()) {
            while (row.next()) {
                unread.add(new Unread(
                        row.getObject(1, UUID.class),
                        row.getString(2),
                        row.getString(3),
                        row.getLong(4),
                        row.getObject(5, LocalDate.class)));
            }
            return unread;
        } catch (SQLException cause) {
            throw new IllegalStateException("what is still to be read could not be listed", cause);
        }
    }

    public Map<Of, Known> known(Collection<UUID> homes) {
        Map<Of, Known> known = new HashMap<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement ask = connection.prepareStatement(KNOWN)) {
            var ids = connection.createArrayOf("uuid", homes.toArray());
            ask.setArray(1, ids);
            ask.setArray(2, ids);
            try (ResultSet row = ask.executeQuery()) {
                while (row.next()) {
                    LocalDate day = row.getObject(3, LocalDate.class);
                    known.put(
                            new Of(row.getObject(1, UUID.class), row.getString(2)),
                            new Known(day, day == null && row.getBoolean(4)));
                }
            }
            return known;
        } catch (SQLException cause) {
            throw new IllegalStateException("the last times could not be read", cause);
        }
    }

    /** Keeps what is told and lays what is left of running years out again from it. Of each task once. */
    public void tell(List<Told> told) {
        if (told.isEmpty()) {
            return;
        }
        Set<UUID> homes = told.stream().map(Told::home).collect(Collectors.toSet());
        readings.takeOff(homes);
        keep(told);
        years.tell(told);
        readings.putOn(homes);
    }

    private void keep(List<Told> told) {
        var history = ManyRows.into("unit_history", "home_id uuid, equipment_id uuid, task_code text, day date");
        var unread = ManyRows.into("last_time_unread", "home_id uuid, equipment_id uuid, task_code text");
        for (Told one : told) {
            LocalDate day = one.day();
            if (day == null) {
                unread.add(one.home(), one.unit(), one.task());
            } else {
                history.add(one.home(), one.unit(), one.task(), day);
            }
        }
        try (Connection connection = datasource.getConnection();
                PreparedStatement before = connection.prepareStatement(TOLD_BEFORE);
                PreparedStatement noLonger = connection.prepareStatement(NO_LONGER_UNREAD)) {
            for (PreparedStatement delete : List.of(before, noLonger)) {
                delete.setArray(
                        1,
                        connection.createArrayOf(
                                "uuid", told.stream().map(Told::unit).toArray()));
                delete.setArray(
                        2,
                        connection.createArrayOf(
                                "text", told.stream().map(Told::task).toArray()));
            }
            before.setObject(3, takeOver.dayOrToday());
            before.executeUpdate();
            noLonger.executeUpdate();
            history.store(connection);
            unread.store(connection);
        } catch (SQLException cause) {
            throw new IllegalStateException("the last times could not be kept", cause);
        }
    }
}
