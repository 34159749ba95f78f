package changeover.scheduling.visits;

import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.CatalogueJson;
import changeover.contracts.catalogue.Due;
import changeover.contracts.catalogue.Task;
import changeover.contracts.tenants.Ids;
import changeover.contracts.tenants.ManyRows;
import changeover.contracts.words.Wording;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;

/**
 * Planned years go into their tables by a handful of statements. What many lines of a season share (the wording of a
 * task, its window, its reason) is sent once and numbered; the database writes it into every line.
 */
final class YearRows {

    private static final String TASKS = """
            insert into visit_task (visit_id, equipment_id, task_code, wording_en, wording_fr, who, ticket, minutes,
              due_from, due_until, act, reason_en, reason_fr, basis, body, position)
            select (?::uuid[])[l.visit], (?::uuid[])[l.unit], s.task_code, s.wording_en, s.wording_fr, 'technician',
              s.ticket, s.minutes, s.due_from, s.due_until, s.act, s.reason_en, s.reason_fr, s.basis, s.body, l.position
            from unnest(?::int[], ?::int[], ?::int[], ?::int[]) as l(visit, unit, shared, position)
            join unnest(?::text[], ?::text[], ?::text[], ?::text[], ?::int[], ?::date[], ?::date[], ?::text[],
              ?::text[], ?::text[], ?::text[], ?::jsonb[]) with ordinality as s(task_code, wording_en, wording_fr,
              ticket, minutes, due_from, due_until, act, reason_en, reason_fr, basis, body, number)
              on s.number = l.shared
            """;

    /** The task of a visit that the plan sells and for which nothing is promised. */
    private static final String LOOK_OVER = "visit-look-over";

    private static final Wording NOTHING_ELSE = new Wording(
            "Your plan gives this visit; nothing else falls due at it.",
            "Votre forfait comprend cette visite ; rien d’autre n’y est prévu.");

    /** What lines of many visits have in common. */
    private record Shared(Task task, String basis, int minutes, Due due, Wording reason) {

        /** Tasks of one catalogue are told apart by their codes. */
        @Override
        public int hashCode() {
            return Objects.hash(task.code(), due, reason);
        }
    }

    private final Catalogue catalogue;

    private final List<UUID> visits = new ArrayList<>();
    private final Map<UUID, Integer> units = new LinkedHashMap<>();
    private final Map<Shared, Integer> shared = new LinkedHashMap<>();
    private final Numbers lineVisit = new Numbers();
    private final Numbers lineUnit = new Numbers();
    private final Numbers lineShared = new Numbers();
    private final Numbers linePosition = new Numbers();

    private final ManyRows visitRows = ManyRows.into(
            "visit",
            "id uuid, home_id uuid, agreement_id uuid, kind text, window_from date, window_until date, minutes int");
    private final ManyRows householdRows = ManyRows.into(
            "household_task",
            "home_id uuid, agreement_id uuid, equipment_id uuid, task_code text, wording_en text, wording_fr text,"
                    + " due_from date, due_on date, act text");
    private final ManyRows unkeptRows = ManyRows.into(
            "unkept_promise",
            "home_id uuid, agreement_id uuid, equipment_id uuid, task_code text, wording_en text, wording_fr text,"
                    + " due_from date, due_until date, why_en text, why_fr text");
    private final ManyRows plannedRows =
            ManyRows.into("year_planned", "agreement_id uuid, visits int, tasks int, unkept int");

    YearRows(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    void add(PlannedYear year) {
        UUID home = year.of().homeId();
        UUID agreement = year.of().agreementId();
        int lines = 0;
        for (PlannedVisit visit : year.plan().visits()) {
            UUID id = Ids.next();
            visits.add(id);
            int position = 0;
            int minutes = visit.minutes();
            Task lookOver =
                    visit.tasks().isEmpty() ? catalogue.findTask(LOOK_OVER).orElse(null) : null;
            if (lookOver != null) {
                minutes = lookOver.minutes();
                Due any = new Due(visit.window(), visit.window().from(), Due.Act.DO);
                line(0, new Shared(lookOver, lookOver.basis(), minutes, any, NOTHING_ELSE), position++);
            }
            visitRows.add(
                    id,
                    home,
                    agreement,
                    VisitKind.PLAN.code(),
                    visit.window().from(),
                    visit.window().until(),
                    minutes);
            for (Promise promise : visit.tasks()) {
                line(unit(promise.equipmentId()), shared(year.of(), promise), position++);
            }
            lines += position;
        }
        for (Promise promise : year.plan().household()) {
            Wording wording = catalogue.task(promise.taskCode()).wording();
            householdRows.add(
                    home,
                    agreement,
                    promise.equipmentId(),
                    promise.taskCode(),
                    wording.en(),
                    wording.fr(),
                    promise.window().from(),
                    promise.due().on(),
                    act(promise.due()));
        }
        for (Unkept unkept : year.plan().unkept()) {
            Promise promise = unkept.promise();
            Wording wording = catalogue.task(promise.taskCode()).wording();
            unkeptRows.add(
                    home,
                    agreement,
                    promise.equipmentId(),
                    promise.taskCode(),
                    wording.en(),
                    wording.fr(),
                    promise.window().from(),
                    promise.window().until(),
                    unkept.why().en(),
                    unkept.why().fr());
        }
        plannedRows.add(
                agreement,
                year.plan().visits().size(),
                lines,
                year.plan().unkept().size());
    }

    private Shared shared(YearToPlan year, Promise promise) {
        Task task = catalogue.task(promise.taskCode());
        return new Shared(task, year.basis(promise, task), promise.minutes(), promise.due(), promise.reason());
    }

    private int unit(UUID equipment) {
        return units.computeIfAbsent(equipment, _ -> units.size() + 1);
    }

    /** A line of the visit added last; unit 0 is the home as a whole. */
    private void line(int unit, Shared said, int position) {
        lineVisit.add(visits.size());
        lineUnit.add(unit);
        lineShared.add(shared.computeIfAbsent(said, _ -> shared.size() + 1));
        linePosition.add(position);
    }

    private static String act(Due due) {
        return due.act().name().toLowerCase(Locale.ROOT);
    }

    void store(Connection connection) throws SQLException {
        plannedRows.store(connection);
        visitRows.store(connection);
        storeLines(connection);
        householdRows.store(connection);
        unkeptRows.store(connection);
    }

    private void storeLines(Connection connection) throws SQLException {
        if (lineVisit.size() == 0) {
            return;
        }
        // A general plan would not know how long the arrays are, and would join them row by row.
        try (var choice = connection.createStatement()) {
            choice.execute("set local plan_cache_mode = force_custom_plan");
        }
        try (var insert = connection.prepareStatement(TASKS)) {
            array(insert, 1, "uuid", visits);
            array(insert, 2, "uuid", List.copyOf(units.keySet()));
            insert.setObject(3, lineVisit.toArray());
            insert.setObject(4, lineUnit.toArray());
            insert.setObject(5, lineShared.toArray());
            insert.setObject(6, linePosition.toArray());
            bindShared(insert);
            insert.executeUpdate();
        }
    }

    private void bindShared(PreparedStatement insert) throws SQLException {
        List<Shared> all = List.copyOf(shared.keySet());
        List<Task> tasks = all.stream().map(Shared::task).toList();
        text(insert, 7, tasks.stream().map(Task::code).toList());
        text(insert, 8, tasks.stream().map(task -> task.wording().en()).toList());
        text(insert, 9, tasks.stream().map(task -> task.wording().fr()).toList());
        optional(
                insert,
                10,
                "text",
                tasks.stream().map(task -> task.ticket().kind()).toList());
        array(insert, 11, "int4", all.stream().map(Shared::minutes).toList());
        days(insert, 12, all.stream().map(one -> one.due().window().from()).toList());
        days(insert, 13, all.stream().map(one -> one.due().window().until()).toList());
        text(insert, 14, all.stream().map(one -> act(one.due())).toList());
        text(insert, 15, all.stream().map(one -> one.reason().en()).toList());
        text(insert, 16, all.stream().map(one -> one.reason().fr()).toList());
        text(insert, 17, all.stream().map(Shared::basis).toList());
        optional(insert, 18, "jsonb", tasks.stream().map(YearRows::body).toList());
    }

    /** A task that the business wrote itself is copied whole; a shipped one is found by its code. */
    static Optional<String> body(Task task) {
        boolean shipped =
                Catalogue.shipped().findTask(task.code()).filter(task::equals).isPresent();
        return shipped ? Optional.empty() : Optional.of(CatalogueJson.write(task));
    }

    private static void text(PreparedStatement insert, int at, List<String> values) throws SQLException {
        array(insert, at, "text", values);
    }

    private static void days(PreparedStatement insert, int at, List<LocalDate> days) throws SQLException {
        array(insert, at, "date", days.stream().map(LocalDate::toString).toList());
    }

    private static void optional(PreparedStatement insert, int at, String type, List<Optional<String>> values)
            throws SQLException {
        insert.setArray(
                at,
                insert.getConnection()
                        .createArrayOf(
                                type,
                                values.stream().map(value -> value.orElse(null)).toArray()));
    }

    private static void array(PreparedStatement insert, int at, String type, List<?> values) throws SQLException {
        insert.setArray(at, insert.getConnection().createArrayOf(type, values.toArray()));
    }
}
