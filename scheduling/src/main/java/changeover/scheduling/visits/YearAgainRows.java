package changeover.scheduling.visits;

import changeover.contracts.calendar.Window;
import changeover.contracts.tenants.Ids;
import changeover.scheduling.visits.YearAgain.Kept;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;

/** A year laid out again goes into its rows: what stands keeps its row and moves, the look-over goes where there is work. */
final class YearAgainRows {

    private static final String NO_LOOK_OVER =
            "delete from visit_task where visit_id = any (?::uuid[]) and task_code = ?";
    private static final String MOVE_VISIT =
            "update visit set window_from = ?, window_until = ?, minutes = ? where id = ? and"
                    + " (window_from, window_until, minutes) is distinct from (?, ?, ?)";
    private static final String MOVE_TASK =
            "update visit_task set visit_id = ?, position = ? where id = ? and (visit_id, position) is distinct from (?, ?)";
    private static final String COUNT = """
            update year_planned y set
              visits = (select count(*) from visit v
                         where v.tenant_id = y.tenant_id and v.agreement_id = y.agreement_id and v.kind = 'plan'),
              tasks = (select count(*) from visit v
                         join visit_task t on t.tenant_id = v.tenant_id and t.visit_id = v.id
                        where v.tenant_id = y.tenant_id and v.agreement_id = y.agreement_id and v.kind = 'plan'),
              unkept = (select count(*) from unkept_promise u
                         where u.tenant_id = y.tenant_id and u.agreement_id = y.agreement_id)
             where y.agreement_id = ?
            """;

    private final Connection connection;
    private final YearRows rows;

    YearAgainRows(Connection connection, YearRows rows) {
        this.connection = connection;
        this.rows = rows;
    }

    void store(YearToPlan year, YearAgain again, List<StandingVisit> standing) throws SQLException {
        Map<Promise, UUID> stood = StandingVisit.rows(standing);
        List<UUID> changed = again.visits().stream()
                .map(Kept::stood)
                .filter(Objects::nonNull)
                .map(StandingVisit::id)
                .toList();
        try (var remove = connection.prepareStatement(NO_LOOK_OVER);
                var visits = connection.prepareStatement(MOVE_VISIT);
                var tasks = connection.prepareStatement(MOVE_TASK)) {
            remove.setArray(1, connection.createArrayOf("uuid", changed.toArray()));
            remove.setString(2, YearRows.LOOK_OVER);
            remove.executeUpdate();
            for (Kept kept : again.visits()) {
                keep(year, kept, stood, visits, tasks);
            }
            visits.executeBatch();
            tasks.executeBatch();
        }
        again.household().forEach(promise -> rows.addHousehold(year, promise, promise.equipmentId()));
        again.unkept().forEach(one -> rows.addUnkept(year, one, one.promise().equipmentId()));
        rows.store(connection);
        try (var count = connection.prepareStatement(COUNT)) {
            count.setObject(1, year.agreementId());
            count.executeUpdate();
        }
    }

    private void keep(
            YearToPlan year, Kept kept, Map<Promise, UUID> stood, PreparedStatement visits, PreparedStatement tasks)
            throws SQLException {
        StandingVisit before = kept.stood();
        UUID id = before == null ? Ids.next() : before.id();
        List<Promise> work = new ArrayList<>();
        StandingVisit stays = kept.visit().pinned() == null ? null : before;
        if (stays != null) {
            stays.tasks().forEach(task -> work.add(task.promise()));
        }
        work.addAll(kept.visit().tasks());
        int position = 0;
        int minutes = 0;
        Window window = stays != null ? stays.window() : kept.visit().window();
        for (Promise promise : work) {
            UUID row = stood.get(promise);
            if (row == null) {
                rows.addLine(year, id, promise, promise.equipmentId(), position);
            } else {
                move(tasks, id, position, row);
            }
            position++;
            minutes += promise.minutes();
            window = stays != null ? window.common(promise.window()).orElse(window) : window;
        }
        if (work.isEmpty()) {
            minutes = rows.addLookOver(id, window);
        }
        if (before == null) {
            rows.addVisit(year, id, window, minutes);
        } else {
            move(visits, window, minutes, id);
        }
    }

    private static void move(PreparedStatement tasks, UUID visit, int position, UUID row) throws SQLException {
        tasks.setObject(1, visit);
        tasks.setInt(2, position);
        tasks.setObject(3, row);
        tasks.setObject(4, visit);
        tasks.setInt(5, position);
        tasks.addBatch();
    }

    private static void move(PreparedStatement visits, Window window, int minutes, UUID id) throws SQLException {
        int at = 1;
        for (LocalDate day : List.of(window.from(), window.until())) {
            visits.setObject(at, day);
            visits.setObject(at + 4, day);
            at++;
        }
        visits.setInt(3, minutes);
        visits.setObject(4, id);
        visits.setInt(7, minutes);
        visits.addBatch();
    }
}
