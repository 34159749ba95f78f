package changeover.scheduling.visits;

import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.CatalogueJson;
import changeover.contracts.catalogue.Due;
import changeover.contracts.catalogue.Task;
import changeover.contracts.tenants.Ids;
import changeover.contracts.tenants.ManyRows;
import changeover.contracts.tenants.SharedRows;
import changeover.contracts.words.Wording;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Planned years go into their tables by a handful of statements, however many they are. */
final class YearRows {

    /** The task of a visit that the plan sells and for which nothing is promised. */
    static final String LOOK_OVER = "visit-look-over";

    /** The task of the first visit to a home whose machines nobody read yet. */
    private static final String READ = "read-equipment";

    private static final Wording STILL_UNREAD = new Wording(
            "What stands in this home is not known yet; what is promised for it follows once it is read.",
            "On ne sait pas encore ce qu’il y a dans cette maison; ce qui y est promis suivra une fois les appareils relevés.");

    /** What many visits have in common. */
    private record Going(Window window, int minutes) {}

    /** What lines of many visits have in common. */
    private record Line(Task task, String basis, int minutes, Due due, Wording reason) {

        /** Tasks of one catalogue are told apart by their codes. */
        @Override
        public int hashCode() {
            return Objects.hash(task.code(), due, reason);
        }
    }

    /** What tasks of many households have in common. */
    private record Own(String taskCode, Due due) {}

    private static final int MANY = 50;

    private final Catalogue catalogue;
    private int years;

    private final SharedRows<Going> visits = SharedRows.into(
            "visit",
            "id, home_id, agreement_id",
            "",
            "kind text, window_from date, window_until date, minutes int",
            YearRows::written);
    private final SharedRows<Line> lines = SharedRows.into(
            "visit_task",
            "visit_id, equipment_id",
            "position",
            "task_code text, wording_en text, wording_fr text, who text, ticket text, minutes int, due_from date,"
                    + " due_until date, act text, reason_en text, reason_fr text, basis text, body jsonb",
            YearRows::written);
    private final SharedRows<Own> household = SharedRows.into(
            "household_task",
            "home_id, agreement_id, equipment_id",
            "",
            "task_code text, wording_en text, wording_fr text, due_from date, due_on date, act text",
            this::written);
    private final SharedRows<Unkept> unkept = SharedRows.into(
            "unkept_promise",
            "home_id, agreement_id, equipment_id",
            "",
            "task_code text, wording_en text, wording_fr text, due_from date, due_until date, why_en text, why_fr text",
            this::written);
    private final ManyRows planned =
            ManyRows.into("year_planned", "agreement_id uuid, visits int, tasks int, unkept int");

    YearRows(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    void add(PlannedYear year) {
        add(year, false);
    }

    /** @param unread whether machines are left to the first visit, which then takes as long as reading them takes too */
    void add(PlannedYear year, boolean unread) {
        years++;
        int tasks = 0;
        boolean reads = unread;
        for (PlannedVisit visit : year.plan().visits()) {
            tasks += add(year, visit, reads);
            reads = false;
        }
        for (Promise promise : year.plan().household()) {
            addHousehold(year.of(), promise, year.unit(promise));
        }
        for (Unkept one : year.plan().unkept()) {
            addUnkept(year.of(), one, year.unit(one.promise()));
        }
        planned.add(
                year.of().agreementId(),
                year.plan().visits().size(),
                tasks,
                year.plan().unkept().size());
    }

    /** Answers how many lines the visit has. */
    private int add(PlannedYear year, PlannedVisit visit, boolean reads) {
        UUID id = Ids.next();
        int position = 0;
        for (Promise promise : visit.tasks()) {
            addLine(year.of(), id, said(visit, promise), year.unit(promise), position++);
        }
        int minutes = visit.minutes();
        if (reads) {
            minutes += addForTheHome(id, visit.window(), READ, STILL_UNREAD, position++);
        } else if (position == 0) {
            minutes += addLookOver(id, visit.window());
        }
        addVisit(year.of(), id, visit.window(), minutes);
        return Math.max(1, position);
    }

    /** Where a task has a visit of its own because it is longer than a visit may be, its reason says so. */
    static Promise said(PlannedVisit visit, Promise promise) {
        return visit.longer().map(promise::because).orElse(promise);
    }

    void addVisit(YearToPlan year, UUID id, Window window, int minutes) {
        visits.add(new Going(window, minutes), ids(id, year.homeId(), year.agreementId()));
    }

    void addLine(YearToPlan year, UUID visit, Promise promise, UUID unit, int position) {
        Task task = catalogue.task(promise.taskCode());
        lines.add(
                new Line(task, year.basis(unit, task), promise.minutes(), promise.due(), promise.reason()),
                ids(visit, unit),
                position);
    }

    /** A visit for which nothing is promised looks the equipment over; answers how many minutes that takes. */
    int addLookOver(UUID visit, Window window) {
        return addForTheHome(visit, window, LOOK_OVER, PlannedVisit.NOTHING_ELSE, 0);
    }

    private int addForTheHome(UUID visit, Window window, String code, Wording why, int position) {
        Task task = catalogue.task(code);
        Due any = new Due(window, window.from(), Due.Act.DO);
        lines.add(new Line(task, task.basis(), task.minutes(), any, why), ids(visit, null), position);
        return task.minutes();
    }

    void addHousehold(YearToPlan year, Promise promise, UUID unit) {
        household.add(new Own(promise.taskCode(), promise.due()), ids(year.homeId(), year.agreementId(), unit));
    }

    void addUnkept(YearToPlan year, Unkept one, UUID unit) {
        unkept.add(one, ids(year.homeId(), year.agreementId(), unit));
    }

    private static @Nullable UUID[] ids(@Nullable UUID... ids) {
        return ids;
    }

    void store(Connection connection) throws SQLException {
        boolean many = years >= MANY;
        planned.store(connection);
        visits.store(connection);
        if (many) {
            lookAgain(connection);
        }
        lines.store(connection);
        household.store(connection);
        unkept.store(connection);
    }

    /** Between the visits and what refers to them: a few years are not worth a look. */
    private static void lookAgain(Connection connection) throws SQLException {
        try (var look = connection.prepareStatement("select look_again_at_visits()")) {
            look.execute();
        }
    }

    private static @Nullable Object[] written(Going going) {
        return new @Nullable Object[] {
            VisitKind.PLAN.code(), going.window().from(), going.window().until(), going.minutes()
        };
    }

    private static @Nullable Object[] written(Line line) {
        Task task = line.task();
        return new @Nullable Object[] {
            task.code(),
            task.wording().en(),
            task.wording().fr(),
            task.who().code(),
            task.ticket().kind().orElse(null),
            line.minutes(),
            line.due().window().from(),
            line.due().window().until(),
            act(line.due()),
            line.reason().en(),
            line.reason().fr(),
            line.basis(),
            body(task).orElse(null)
        };
    }

    private @Nullable Object[] written(Own own) {
        Wording wording = catalogue.task(own.taskCode()).wording();
        return new @Nullable Object[] {
            own.taskCode(),
            wording.en(),
            wording.fr(),
            own.due().window().from(),
            own.due().on(),
            act(own.due())
        };
    }

    private @Nullable Object[] written(Unkept one) {
        Promise promise = one.promise();
        Wording wording = catalogue.task(promise.taskCode()).wording();
        return new @Nullable Object[] {
            promise.taskCode(),
            wording.en(),
            wording.fr(),
            promise.window().from(),
            promise.window().until(),
            one.why().en(),
            one.why().fr()
        };
    }

    private static String act(Due due) {
        return due.act().name().toLowerCase(Locale.ROOT);
    }

    /** A task that the business wrote itself is copied whole; a shipped one is found by its code. */
    static Optional<String> body(Task task) {
        boolean shipped =
                Catalogue.shipped().findTask(task.code()).filter(task::equals).isPresent();
        return shipped ? Optional.empty() : Optional.of(CatalogueJson.write(task));
    }
}
