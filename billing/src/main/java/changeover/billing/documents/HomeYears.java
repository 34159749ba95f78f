package changeover.billing.documents;

import changeover.billing.documents.band.HomeYear;
import changeover.billing.documents.band.Turn;
import changeover.contracts.calendar.Season;
import changeover.scheduling.visits.YearOfHome;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A home's planned year as the year band draws it: a row a machine, a knot a visit, the household's own tasks below. */
public final class HomeYears {

    private HomeYears() {}

    /** @param begins any day of the first of the twelve months */
    public static HomeYear of(YearOfHome year, List<Season> seasons, LocalDate begins, LocalDate today, Locale locale) {
        LocalDate first = begins.withDayOfMonth(1);
        LocalDate last = first.plusMonths(12).minusDays(1);
        return new HomeYear(
                first,
                today,
                Turn.of(seasons, first, last),
                rows(year, locale),
                visits(year),
                household(year, today, locale));
    }

    private static List<HomeYear.Row> rows(YearOfHome year, Locale locale) {
        Map<String, List<HomeYear.Promise>> machines = new LinkedHashMap<>();
        for (YearOfHome.Promised promised : year.promises()) {
            machines.computeIfAbsent(machine(promised.machine(), locale), name -> new ArrayList<>())
                    .add(new HomeYear.Promise(
                            promised.task().in(locale),
                            promised.window().from(),
                            promised.window().last(),
                            promised.visitId().toString()));
        }
        for (YearOfHome.NotKept unkept : year.unkept()) {
            machines.computeIfAbsent(machine(unkept.machine(), locale), name -> new ArrayList<>())
                    .add(new HomeYear.Promise(
                            unkept.task().in(locale),
                            unkept.window().from(),
                            unkept.window().last(),
                            null));
        }
        return machines.entrySet().stream()
                .map(machine -> new HomeYear.Row(machine.getKey(), machine.getValue()))
                .toList();
    }

    private static List<HomeYear.Visit> visits(YearOfHome year) {
        List<HomeYear.Visit> visits = new ArrayList<>();
        for (YearOfHome.Going going : year.visits()) {
            HomeYear.Standing standing = standing(going.standing());
            if (going.day() != null && standing != null) {
                visits.add(new HomeYear.Visit(going.visitId().toString(), going.day(), standing));
            }
        }
        return visits;
    }

    private static HomeYear.@Nullable Standing standing(YearOfHome.Standing standing) {
        return switch (standing) {
            case CLOSED -> HomeYear.Standing.CLOSED;
            case HAS_A_DAY, LATE -> HomeYear.Standing.PENCILLED;
            case TO_COME, WITHOUT_DAY, CANCELLED, NO_ACCESS, NOT_KEPT -> null;
        };
    }

    private static List<HomeYear.HouseholdTask> household(YearOfHome year, LocalDate today, Locale locale) {
        Map<String, List<HomeYear.Mark>> tasks = new LinkedHashMap<>();
        for (YearOfHome.OwnTask task : year.household()) {
            LocalDate done = task.doneOn();
            HomeYear.Mark mark = done != null
                    ? new HomeYear.Mark(done, HomeYear.Done.DONE)
                    : new HomeYear.Mark(
                            task.dueOn(),
                            task.dueOn().isBefore(today) ? HomeYear.Done.NOT_DONE : HomeYear.Done.TO_COME);
            tasks.computeIfAbsent(task.task().in(locale), name -> new ArrayList<>())
                    .add(mark);
        }
        return tasks.entrySet().stream()
                .map(task -> new HomeYear.HouseholdTask(task.getKey(), task.getValue()))
                .toList();
    }

    private static String machine(@Nullable String machine, Locale locale) {
        return machine == null ? Words.in(locale).say("report.home") : machine;
    }
}
