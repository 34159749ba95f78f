package changeover.scheduling.visits;

import changeover.contracts.calendar.Climate;
import changeover.contracts.calendar.DayInWords;
import changeover.contracts.calendar.Season;
import changeover.contracts.calendar.Term;
import changeover.contracts.catalogue.Cadence;
import changeover.contracts.catalogue.Due;
import changeover.contracts.catalogue.History;
import changeover.contracts.catalogue.SeasonRules;
import changeover.contracts.words.Wording;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the tasks of an agreement owe in a term: each cadence unrolled into windows, those that need warm outdoor air
 * narrowed to the warm months where the window has any.
 */
public final class Promises {

    private Promises() {}

    /** What tasks of one cadence and one history owe alike. */
    private record Alike(Cadence cadence, History history, boolean warmOnly) {}

    private record Time(Due due, Wording reason) {}

    /** In the order of the tasks, each task's own in the order of the days. */
    public static List<Promise> in(Term term, List<PromisedTask> tasks, SeasonRules rules) {
        Map<Alike, List<Time>> times = new HashMap<>();
        List<Promise> promises = new ArrayList<>();
        for (PromisedTask task : tasks) {
            Alike alike = new Alike(task.cadence(), task.history(), task.warmOnly());
            for (Time time : times.computeIfAbsent(alike, some -> times(some, term, rules))) {
                promises.add(new Promise(
                        task.equipmentId(), task.taskCode(), task.who(), task.minutes(), time.due, time.reason));
            }
        }
        return List.copyOf(promises);
    }

    private static List<Time> times(Alike alike, Term term, SeasonRules rules) {
        Wording often = alike.cadence.sentence(rules.climate());
        Wording last = lastTime(alike);
        return alike.cadence.duesIn(term, alike.history, rules).stream()
                .map(due -> alike.warmOnly ? warm(due, rules.climate()) : due)
                .map(due -> new Time(due, reason(often, last, due)))
                .toList();
    }

    private static Due warm(Due due, Climate climate) {
        Optional<Season> warm = climate.find(Climate.WARM);
        return warm.flatMap(season -> season.meeting(due.window()).stream().findFirst())
                .flatMap(due.window()::common)
                .map(window -> new Due(window, window.nearest(due.on()), due.act()))
                .orElse(due);
    }

    private static Wording reason(Wording often, Wording last, Due due) {
        Wording by = DayInWords.of(due.window().last());
        return new Wording(
                capital(often.en()) + last.en() + "; by " + by.en() + ".",
                capital(often.fr()) + last.fr() + "; au plus tard le " + by.fr() + ".");
    }

    private static Wording lastTime(Alike alike) {
        return switch (alike.cadence) {
            case Cadence.EveryMonths _, Cadence.CheckThenReplace _, Cadence.LookThenChange _ -> {
                LocalDate last = alike.history.lastDone();
                if (last == null) {
                    yield new Wording(", the last time is not known", ", la dernière fois n’est pas connue");
                }
                Wording day = DayInWords.of(last);
                yield new Wording(", last done " + day.en(), ", fait la dernière fois le " + day.fr());
            }
            case Cadence.BeforeSeason _, Cadence.EachSeason _, Cadence.TimesAYear _, Cadence.OnRequest _ ->
                new Wording("", "");
        };
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
