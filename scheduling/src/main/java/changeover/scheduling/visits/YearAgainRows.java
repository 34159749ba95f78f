package changeover.scheduling.visits;

import changeover.contracts.calendar.Window;
import changeover.contracts.tenants.Ids;
import changeover.scheduling.visits.YearAgain.Kept;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Stream;

/** Years laid out again go into their rows: what stands keeps its row and moves, the look-over goes where there is work. */
final class YearAgainRows {

    private static final String NO_LOOK_OVER =
            "delete from visit_task where visit_id = any (?::uuid[]) and task_code = ?";

    private static final String MOVE_VISITS = """
            update visit v set window_from = m.window_from, window_until = m.window_until, minutes = m.minutes
              from unnest(?::uuid[], ?::date[], ?::date[], ?::int[]) as m (id, window_from, window_until, minutes)
             where v.tenant_id = current_tenant() and v.id = m.id
               and (v.window_from, v.window_until, v.minutes) is distinct from (m.window_from, m.window_until, m.minutes)
            """;

    private static final String MOVE_TASKS = """
            update visit_task t set visit_id = m.visit_id, position = m.position
              from unnest(?::uuid[], ?::uuid[], ?::int[]) as m (id, visit_id, position)
             where t.tenant_id = current_tenant() and t.id = m.id
               and (t.visit_id, t.position) is distinct from (m.visit_id, m.position)
            """;

    private static final String REDATE_TASKS = """
            update visit_task t set due_from = m.due_from, due_until = m.due_until, act = m.act, reason_en = m.en,
              reason_fr = m.fr
              from unnest(?::uuid[], ?::date[], ?::date[], ?::text[], ?::text[], ?::text[])
                as m (id, due_from, due_until, act, en, fr)
             where t.tenant_id = current_tenant() and t.id = m.id
            """;

    private static final String NO_LONGER_OWED =
            "delete from visit_task where tenant_id = current_tenant() and id = any (?::uuid[])";

    private static final String COUNT = """
            update year_planned y set
              visits = (select count(*) from visit v
                         where v.tenant_id = y.tenant_id and v.agreement_id = y.agreement_id and v.kind = 'plan'),
              tasks = (select count(*) from visit v
                         join visit_task t on t.tenant_id = v.tenant_id and t.visit_id = v.id
                        where v.tenant_id = y.tenant_id and v.agreement_id = y.agreement_id and v.kind = 'plan'),
              unkept = (select count(*) from unkept_promise u
                         where u.tenant_id = y.tenant_id and u.agreement_id = y.agreement_id)
             where y.agreement_id = any (?::uuid[])
            """;

    private record MovedVisit(UUID id, Window window, int minutes) {}

    private record MovedTask(UUID id, UUID visit, int position) {}

    private record Redated(UUID id, Promise promise) {}

    private final YearRows rows;
    private final List<UUID> agreements = new ArrayList<>();
    private final List<MovedVisit> visits = new ArrayList<>();
    private final List<MovedTask> tasks = new ArrayList<>();
    private final List<Redated> redated = new ArrayList<>();
    private final List<UUID> gone = new ArrayList<>();

    YearAgainRows(YearRows rows) {
        this.rows = rows;
    }

    void add(YearToPlan year, YearAgain again, List<StandingVisit> standing) {
        add(year, again, StandingVisit.rows(standing));
    }

    /** What was counted anew keeps its row and takes its new days; what is no longer owed, or no visit keeps, loses it. */
    void add(YearToPlan year, YearAgain again, Recount recount) {
        Map<Promise, UUID> stood = StandingVisit.rows(recount.standing());
        stood.putAll(recount.rows());
        recount.rows().forEach((promise, row) -> redated.add(new Redated(row, promise)));
        gone.addAll(recount.gone());
        again.unkept().stream()
                .flatMap(one -> Stream.ofNullable(recount.rows().get(one.promise())))
                .forEach(gone::add);
        add(year, again, stood);
    }

    private void add(YearToPlan year, YearAgain again, Map<Promise, UUID> stood) {
        agreements.add(year.agreementId());
        again.visits().forEach(kept -> keep(year, kept, stood));
        again.household().forEach(promise -> rows.addHousehold(year, promise, promise.equipmentId()));
        again.unkept().forEach(one -> rows.addUnkept(year, one, one.promise().equipmentId()));
    }

    private void keep(YearToPlan year, Kept kept, Map<Promise, UUID> stood) {
        StandingVisit before = kept.stood();
        UUID id = before == null ? Ids.next() : before.id();
        StandingVisit stays = kept.visit().pinned() == null ? null : before;
        int position = 0;
        int minutes = 0;
        Window window = stays != null ? stays.window() : kept.visit().window();
        for (Promise promise : kept.visit().tasks()) {
            UUID row = stood.get(promise);
            if (row == null) {
                rows.addLine(year, id, YearRows.said(kept.visit(), promise), promise.equipmentId(), position);
            } else {
                tasks.add(new MovedTask(row, id, position));
            }
            position++;
            minutes += promise.minutes();
            window = stays != null ? window.common(promise.window()).orElse(window) : window;
        }
        if (kept.visit().tasks().isEmpty()) {
            minutes = rows.addLookOver(id, window);
        }
        if (before == null) {
            rows.addVisit(year, id, window, minutes);
        } else {
            visits.add(new MovedVisit(id, window, minutes));
        }
    }

    /** New visits go in before the work that moves to them. */
    void store(Connection connection) throws SQLException {
        try (var remove = connection.prepareStatement(NO_LOOK_OVER);
                var moveVisits = connection.prepareStatement(MOVE_VISITS);
                var moveTasks = connection.prepareStatement(MOVE_TASKS);
                var redate = connection.prepareStatement(REDATE_TASKS);
                var letFall = connection.prepareStatement(NO_LONGER_OWED);
                var count = connection.prepareStatement(COUNT)) {
            column(remove, 1, "uuid", visits, MovedVisit::id);
            remove.setString(2, YearRows.LOOK_OVER);
            remove.executeUpdate();
            rows.store(connection);
            column(moveVisits, 1, "uuid", visits, MovedVisit::id);
            column(moveVisits, 2, "date", visits, visit -> visit.window().from());
            column(moveVisits, 3, "date", visits, visit -> visit.window().until());
            column(moveVisits, 4, "int", visits, MovedVisit::minutes);
            moveVisits.executeUpdate();
            column(moveTasks, 1, "uuid", tasks, MovedTask::id);
            column(moveTasks, 2, "uuid", tasks, MovedTask::visit);
            column(moveTasks, 3, "int", tasks, MovedTask::position);
            moveTasks.executeUpdate();
            redate(redate);
            column(letFall, 1, "uuid", gone, Function.identity());
            letFall.executeUpdate();
            column(count, 1, "uuid", agreements, Function.identity());
            count.executeUpdate();
        }
    }

    private void redate(PreparedStatement redate) throws SQLException {
        column(redate, 1, "uuid", redated, Redated::id);
        column(redate, 2, "date", redated, line -> line.promise().window().from());
        column(redate, 3, "date", redated, line -> line.promise().window().until());
        column(
                redate,
                4,
                "text",
                redated,
                line -> line.promise().due().act().name().toLowerCase(Locale.ROOT));
        column(redate, 5, "text", redated, line -> line.promise().reason().en());
        column(redate, 6, "text", redated, line -> line.promise().reason().fr());
        redate.executeUpdate();
    }

    private static <T> void column(
            PreparedStatement statement, int at, String type, List<T> rows, Function<? super T, ?> value)
            throws SQLException {
        Object[] values = rows.stream().map(value).toArray();
        statement.setArray(at, statement.getConnection().createArrayOf(type, values));
    }
}
