package changeover.scheduling.visits;

import changeover.contracts.agreements.Offer;
import changeover.contracts.calendar.Term;
import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.Cadence;
import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.History;
import changeover.contracts.catalogue.Task;
import changeover.contracts.catalogue.Who;
import changeover.contracts.customers.ShutTimes;
import changeover.scheduling.visits.YearToPlan.UnitTask;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What agreements promise, with what is known of each machine's past and of shut homes: five statements, however many agreements. An
 * agreement whose year was planned before is not read again.
 */
final class YearsToPlan {

    private static final String AGREEMENTS = """
            select a.id, a.home_id, a.term_from, a.term_until, a.visits from agreement a
             where a.id = any (?::uuid[]) and not exists (
               select from year_planned y where y.tenant_id = a.tenant_id and y.agreement_id = a.id)
             order by a.number
            """;

    private static final String UNDER_WAY = """
            select a.id, a.home_id, a.term_from, a.term_until, a.visits from agreement a
             where a.id = any (?::uuid[]) and exists (
               select from year_planned y where y.tenant_id = a.tenant_id and y.agreement_id = a.id)
             order by a.number
            """;

    private static final String PROMISES = """
            select agreement_id, equipment_id, task_code, cadence, who, minutes, basis from agreement_promise
             where agreement_id = any (?::uuid[]) order by agreement_id, position
            """;

    private static final String LAST_DONE = """
            select h.equipment_id, h.task_code, max(h.day) from unit_history h
             where h.equipment_id in (select equipment_id from agreement_unit where agreement_id = any (?::uuid[]))
             group by 1, 2
            """;

    /** Windows that an earlier agreement of the home promised and has not let fall. */
    private static final String PROMISED = """
            select a.id, t.equipment_id, t.task_code, t.due_from, t.due_until
              from agreement a
              join visit v on v.tenant_id = a.tenant_id and v.home_id = a.home_id and v.agreement_id <> a.id
              join visit_task t on t.tenant_id = v.tenant_id and t.visit_id = v.id
              left join visit_ending e on e.tenant_id = v.tenant_id and e.visit_id = v.id
             where a.id = any (?::uuid[]) and v.window_until > a.term_from - 400 and t.equipment_id is not null
               and (e.id is null or e.how = 'closed')
            """;

    private static final String LAST_DONE_AT_HOME = """
            select h.equipment_id, h.task_code, max(h.day) from unit_history h
             where h.home_id = any (?::uuid[]) and h.equipment_id is not null group by 1, 2
            """;

    private static final String PROMISED_AT_HOME = """
            select t.equipment_id, t.task_code, t.due_from, t.due_until
              from visit v
              join visit_task t on t.tenant_id = v.tenant_id and t.visit_id = v.id
              left join visit_ending e on e.tenant_id = v.tenant_id and e.visit_id = v.id
             where v.home_id = any (?::uuid[]) and v.agreement_id is not null and t.equipment_id is not null
               and (e.id is null or e.how = 'closed')
            """;

    private record Earlier(UUID agreement, UUID unit, String task) {}

    private final Connection connection;
    private final Catalogue catalogue;
    private final Map<String, Cadence> cadences = new HashMap<>();
    private final Map<String, Task> tasks = new HashMap<>();

    YearsToPlan(Connection connection, Catalogue catalogue) {
        this.connection = connection;
        this.catalogue = catalogue;
    }

    /** Those of the agreements whose year was not planned yet, by number. */
    List<YearToPlan> of(Collection<UUID> agreementIds) throws SQLException {
        return of(AGREEMENTS, agreementIds);
    }

    /** Those of the agreements whose year was planned before, with all they promise. */
    List<YearToPlan> underWay(Collection<UUID> agreementIds) throws SQLException {
        return of(UNDER_WAY, agreementIds);
    }

    private List<YearToPlan> of(String which, Collection<UUID> agreementIds) throws SQLException {
        var open = new ArrayList<YearToPlan>();
        read(
                which,
                agreementIds,
                row -> open.add(new YearToPlan(
                        uuid(row, 1),
                        uuid(row, 2),
                        new Term(day(row, 3), day(row, 4)),
                        row.getInt(5),
                        List.of(),
                        Map.of(),
                        ShutTimes.NEVER)));
        if (open.isEmpty()) {
            return List.of();
        }
        List<UUID> ids = open.stream().map(YearToPlan::agreementId).toList();
        Map<UUID, Drawn> drawn = promises(ids);
        Map<UUID, ShutTimes> shut = new ShutInYears(connection).ofAgreements(ids);
        return open.stream()
                .map(year -> {
                    Drawn of = drawn.getOrDefault(year.agreementId(), Drawn.NOTHING);
                    return new YearToPlan(
                            year.agreementId(),
                            year.homeId(),
                            year.term(),
                            year.visits(),
                            of.tasks,
                            of.bases,
                            shut.getOrDefault(year.agreementId(), ShutTimes.NEVER));
                })
                .toList();
    }

    /** What is read of one agreement. */
    private record Drawn(List<PromisedTask> tasks, Map<UnitTask, String> bases) {
        static final Drawn NOTHING = new Drawn(List.of(), Map.of());
    }

    private Map<UUID, Drawn> promises(List<UUID> ids) throws SQLException {
        Map<UnitTask, LocalDate> lastDone = new HashMap<>();
        read(LAST_DONE, ids, row -> lastDone.put(new UnitTask(uuid(row, 1), row.getString(2)), day(row, 3)));
        Map<Earlier, List<Window>> promised = new HashMap<>();
        read(
                PROMISED,
                ids,
                row -> promised.computeIfAbsent(
                                new Earlier(uuid(row, 1), uuid(row, 2), row.getString(3)), _ -> new ArrayList<>())
                        .add(new Window(day(row, 4), day(row, 5))));
        Map<UUID, Drawn> drawn = new HashMap<>();
        read(PROMISES, ids, row -> {
            UUID agreement = uuid(row, 1);
            UUID unit = uuid(row, 2);
            Task task = tasks.computeIfAbsent(row.getString(3), catalogue::task);
            LocalDate last = lastDone.isEmpty() ? null : lastDone.get(new UnitTask(unit, task.code()));
            List<Window> earlier = promised.isEmpty()
                    ? List.of()
                    : promised.getOrDefault(new Earlier(agreement, unit, task.code()), List.of());
            Drawn of = drawn.computeIfAbsent(agreement, _ -> new Drawn(new ArrayList<>(), new HashMap<>()));
            of.tasks.add(task(row, unit, task, history(last, earlier)));
            if (!row.getString(7).equals(task.basis())) {
                of.bases.put(new UnitTask(unit, task.code()), row.getString(7));
            }
        });
        return drawn;
    }

    /** The tasks of an offer that is not stored yet, with the past of the home's machines. */
    List<PromisedTask> asOffered(@Nullable UUID homeId, Term term, List<Offer.Promised> promises) throws SQLException {
        Map<UnitTask, LocalDate> lastDone = new HashMap<>();
        Map<UnitTask, List<Window>> promised = new HashMap<>();
        if (homeId != null) {
            read(
                    LAST_DONE_AT_HOME,
                    List.of(homeId),
                    row -> lastDone.put(new UnitTask(uuid(row, 1), row.getString(2)), day(row, 3)));
            read(PROMISED_AT_HOME, List.of(homeId), row -> {
                if (day(row, 4).isAfter(term.from().minusDays(400))) {
                    promised.computeIfAbsent(new UnitTask(uuid(row, 1), row.getString(2)), _ -> new ArrayList<>())
                            .add(new Window(day(row, 3), day(row, 4)));
                }
            });
        }
        return promises.stream()
                .filter(one -> one.equipmentId() != null)
                .map(one -> {
                    UnitTask which = new UnitTask(one.equipmentId(), one.taskCode());
                    return new PromisedTask(
                            one.equipmentId(),
                            one.taskCode(),
                            one.who(),
                            one.minutes(),
                            one.cadence(),
                            catalogue.task(one.taskCode()).outdoorAtLeast() != null,
                            history(lastDone.get(which), promised.getOrDefault(which, List.of())));
                })
                .toList();
    }

    private PromisedTask task(ResultSet row, UUID unit, Task task, History history) throws SQLException {
        return new PromisedTask(
                unit,
                task.code(),
                Who.ofCode(row.getString(5)),
                row.getInt(6),
                cadences.computeIfAbsent(row.getString(4), Cadence::ofJson),
                task.outdoorAtLeast() != null,
                history);
    }

    private static History history(@Nullable LocalDate last, List<Window> promised) {
        return last == null && promised.isEmpty() ? History.NONE : new History(last, promised);
    }

    private interface Reading {
        void row(ResultSet row) throws SQLException;
    }

    private void read(String sql, Collection<UUID> ids, Reading reading) throws SQLException {
        try (var ask = connection.prepareStatement(sql)) {
            ask.setArray(1, connection.createArrayOf("uuid", ids.toArray()));
            ask.setFetchSize(0);
            try (ResultSet row = ask.executeQuery()) {
                while (row.next()) {
                    reading.row(row);
                }
            }
        }
    }

    private static UUID uuid(ResultSet row, int column) throws SQLException {
        return row.getObject(column, UUID.class);
    }

    private static LocalDate day(ResultSet row, int column) throws SQLException {
        return row.getObject(column, LocalDate.class);
    }
}
