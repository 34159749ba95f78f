package changeover.web.session;

import changeover.billing.documents.band.HomeYear;
import changeover.billing.documents.band.HomeYear.Done;
import changeover.billing.documents.band.HomeYear.HouseholdTask;
import changeover.billing.documents.band.HomeYear.Mark;
import changeover.billing.documents.band.HomeYear.Promise;
import changeover.billing.documents.band.HomeYear.Row;
import changeover.billing.documents.band.HomeYear.Visit;
import changeover.billing.documents.band.Turn;
import changeover.contracts.calendar.Season;
import changeover.contracts.words.Wording;
import changeover.scheduling.visits.YearOfHome;
import changeover.scheduling.visits.YearOfHome.Going;
import changeover.scheduling.visits.YearOfHome.Standing;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A home's year as it is drawn: one line a machine, and a line more where promises of one machine lie over each other
 * on different days. A visit that ended otherwise than closed keeps nothing.
 */
public final class YearOfTheHome {

    private final Locale locale;
    private final Map<String, List<List<Promise>>> lines = new LinkedHashMap<>();

    private YearOfTheHome(Locale locale) {
        this.locale = locale;
    }

    /**
     * @param begins any day of the month in which the term starts
     * @param home the words for what is promised for no machine
     */
    public static HomeYear of(
            YearOfHome year, LocalDate begins, LocalDate today, List<Season> seasons, Wording home, Locale locale) {
        var drawn = new YearOfTheHome(locale);
        for (YearOfHome.Promised promised : year.promises()) {
            drawn.put(
                    promised.machine() == null ? home.in(locale) : promised.machine(),
                    new Promise(
                            promised.task().in(locale),
                            promised.window().from(),
                            promised.window().last(),
                            serves(promised.standing()) ? promised.visitId().toString() : null));
        }
        for (YearOfHome.NotKept unkept : year.unkept()) {
            drawn.put(
                    unkept.machine() == null ? home.in(locale) : unkept.machine(),
                    new Promise(
                            unkept.task().in(locale),
                            unkept.window().from(),
                            unkept.window().last(),
                            null));
        }
        LocalDate first = begins.withDayOfMonth(1);
        return new HomeYear(
                first,
                today,
                Turn.of(seasons, first, first.plusYears(1).minusDays(1)),
                drawn.rows(),
                year.visits().stream().flatMap(going -> visit(going).stream()).toList(),
                household(year, today, locale));
    }

    private static boolean serves(Standing standing) {
        return switch (standing) {
            case CLOSED, HAS_A_DAY, LATE, TO_COME, WITHOUT_DAY -> true;
            case CANCELLED, NO_ACCESS, NOT_KEPT -> false;
        };
    }

    /** Promises of the same days share a bracket; others that meet them begin a line of their own. */
    private void put(String machine, Promise promise) {
        List<List<Promise>> own = lines.computeIfAbsent(machine, none -> new ArrayList<>());
        for (List<Promise> line : own) {
            if (line.stream().allMatch(other -> apart(other, promise))) {
                line.add(promise);
                return;
            }
        }
        own.add(new ArrayList<>(List.of(promise)));
    }

    private static boolean apart(Promise one, Promise other) {
        boolean same = one.first().equals(other.first()) && one.last().equals(other.last());
        return same || one.last().isBefore(other.first()) || other.last().isBefore(one.first());
    }

    private List<Row> rows() {
        var rows = new ArrayList<Row>();
        lines.forEach((machine, own) -> {
            for (List<Promise> line : own) {
                boolean oneTask = line.stream().map(Promise::what).distinct().count() == 1;
                boolean further = line != own.getFirst();
                rows.add(new Row(further && oneTask ? line.getFirst().what() : machine, line));
            }
        });
        return rows;
    }

    private static Optional<Visit> visit(Going going) {
        @Nullable LocalDate day = going.day();
        if (day == null || !serves(going.standing())) {
            return Optional.empty();
        }
        boolean closed = going.standing() == Standing.CLOSED;
        return Optional.of(new Visit(
                going.visitId().toString(), day, closed ? HomeYear.Standing.CLOSED : HomeYear.Standing.PENCILLED));
    }

    private static List<HouseholdTask> household(YearOfHome year, LocalDate today, Locale locale) {
        record OneThing(String task, @Nullable UUID machine) {}
        Map<OneThing, List<YearOfHome.OwnTask>> things = new LinkedHashMap<>();
        for (YearOfHome.OwnTask task : year.household()) {
            things.computeIfAbsent(new OneThing(task.taskCode(), task.equipmentId()), none -> new ArrayList<>())
                    .add(task);
        }
        return things.values().stream()
                .map(times -> new HouseholdTask(
                        times.getFirst().task().in(locale),
                        times.stream().map(task -> mark(task, today)).toList()))
                .toList();
    }

    private static Mark mark(YearOfHome.OwnTask task, LocalDate today) {
        @Nullable LocalDate done = task.doneOn();
        if (done != null) {
            return new Mark(done, Done.DONE);
        }
        return new Mark(task.dueOn(), task.dueOn().isBefore(today) ? Done.NOT_DONE : Done.TO_COME);
    }
}
