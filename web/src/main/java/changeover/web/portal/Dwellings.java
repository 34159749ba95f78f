package changeover.web.portal;

import changeover.billing.documents.band.DayWords;
import changeover.billing.documents.band.HomeYear;
import changeover.billing.documents.band.YearTable;
import changeover.contracts.agreements.Agreement;
import changeover.contracts.agreements.AgreementState;
import changeover.contracts.agreements.Agreements;
import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.customers.Home;
import changeover.contracts.words.Wording;
import changeover.scheduling.visits.YearOfHome;
import changeover.scheduling.visits.YearOfHome.Going;
import changeover.scheduling.visits.YearOfHome.Standing;
import changeover.scheduling.visits.YearsOfHomes;
import changeover.web.session.YearBand;
import changeover.web.session.YearOfTheHome;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Puts together what a customer sees of one home: the year they bought, or the calendar year without an agreement. */
@ApplicationScoped
public class Dwellings {

    private static final Wording WHOLE_HOME = new Wording("The home", "La maison");
    private static final int OWN_TASKS = 8;

    @Inject
    Agreements agreements;

    @Inject
    YearsOfHomes years;

    @Inject
    SeenInHomes seen;

    /** @param since the first day on which the customer had a part in the home: visits before it are not theirs */
    Dwelling of(Home home, LocalDate since, LocalDate day, OwnCatalogue.Own trade, Locale locale) {
        LocalDate begins = begins(home, day);
        YearOfHome year = years.of(home.id(), new Window(begins, begins.plusMonths(12)), day);
        HomeYear drawn =
                YearOfTheHome.of(year, begins, day, trade.seasons().climate().seasons(), WHOLE_HOME, locale);
        boolean promised = !year.promises().isEmpty();
        List<YearOfHome.OwnTask> open = open(year, day);
        return new Dwelling(
                home.id(),
                home.line(),
                next(year, day, locale),
                promised,
                promised ? YearBand.svg(drawn, locale, "band-" + home.id()) : "",
                YearTable.of(drawn, locale),
                begins,
                begins.plusMonths(12).minusDays(1),
                open.stream()
                        .map(task -> new Dwelling.Own(
                                task.task().in(locale),
                                orEmpty(task.machine()),
                                task.dueOn(),
                                task.dueOn().isBefore(day)))
                        .toList(),
                cautions(open, trade.catalogue(), locale),
                seen.stoppedIn(home.id(), trade.catalogue(), locale),
                seen.openIn(home.id(), since, trade.catalogue(), locale),
                seen.reportsOf(home.id(), since));
    }

    /** Of a task that comes again only the last time that was missed, or else the next, so that the list is what to do now. */
    private static List<YearOfHome.OwnTask> open(YearOfHome year, LocalDate day) {
        record OneThing(String task, @Nullable UUID machine) {}
        Map<OneThing, YearOfHome.OwnTask> next = new LinkedHashMap<>();
        year.household().stream()
                .filter(task -> task.doneOn() == null)
                .sorted(Comparator.comparing(YearOfHome.OwnTask::dueOn))
                .forEach(task -> next.merge(
                        new OneThing(task.taskCode(), task.equipmentId()),
                        task,
                        (one, later) -> later.dueOn().isAfter(day) ? one : later));
        return next.values().stream().limit(OWN_TASKS).toList();
    }

    private LocalDate begins(Home home, LocalDate day) {
        return agreements.of(home.id()).stream()
                .filter(one -> !day.isBefore(one.term().from())
                        && day.isBefore(one.term().until()))
                .filter(one -> agreements.state(one, day) == AgreementState.IN_FORCE)
                .map((Agreement one) -> one.term().from().withDayOfMonth(1))
                .findFirst()
                .orElse(day.withDayOfYear(1));
    }

    private static Dwelling.@Nullable Next next(YearOfHome year, LocalDate day, Locale locale) {
        DayWords words = DayWords.of(locale);
        return year.visits().stream()
                .filter(going -> toCome(going, day))
                .min(Comparator.comparing(Dwellings::when))
                .map(going -> new Dwelling.Next(
                        going.day() == null ? "" : words.withWeekday(going.day()),
                        going.starts() == null ? "" : hour(going.starts(), words.french()),
                        orEmpty(going.technician()),
                        going.minutes(),
                        words.full(going.window().from()),
                        words.full(going.window().last())))
                .orElse(null);
    }

    private static boolean toCome(Going going, LocalDate day) {
        Standing standing = going.standing();
        LocalDate has = going.day();
        return standing == Standing.HAS_A_DAY
                ? has != null && !has.isBefore(day)
                : standing == Standing.TO_COME || standing == Standing.WITHOUT_DAY;
    }

    private static LocalDate when(Going going) {
        LocalDate day = going.day();
        return day == null ? going.window().last() : day;
    }

    private static String hour(LocalTime time, boolean french) {
        String minutes = time.getMinute() < 10 ? "0" + time.getMinute() : "" + time.getMinute();
        if (!french) {
            return time.getHour() + ":" + minutes;
        }
        return time.getHour() + "\u00a0h" + (time.getMinute() == 0 ? "" : "\u00a0" + minutes);
    }

    private static List<Dwelling.Warning> cautions(List<YearOfHome.OwnTask> tasks, Catalogue trade, Locale locale) {
        Set<String> codes = new LinkedHashSet<>();
        for (YearOfHome.OwnTask task : tasks) {
            trade.findTask(task.taskCode()).ifPresent(known -> {
                if (known.caution() != null) {
                    codes.add(known.caution());
                }
            });
        }
        var warnings = new ArrayList<Dwelling.Warning>();
        for (String code : codes) {
            trade.findCaution(code)
                    .ifPresent(caution -> warnings.add(new Dwelling.Warning(
                            drawing(code),
                            caution.title().in(locale),
                            caution.wording().in(locale))));
        }
        return warnings;
    }

    private static String drawing(String code) {
        return switch (code) {
            case "electrical" -> "lightning";
            case "co", "gas", "refrigerant", "leak-search" -> "flame";
            default -> "drop";
        };
    }

    private static String orEmpty(@Nullable String text) {
        return text == null ? "" : text;
    }
}
