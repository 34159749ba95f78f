package changeover.contracts.catalogue;

import changeover.contracts.calendar.Climate;
import changeover.contracts.calendar.Season;
import changeover.contracts.words.Wording;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;

/** A cadence in words, in both languages; a season is called by the business's own name for it. */
final class CadenceSentence {

    private CadenceSentence() {}

    static Wording of(Cadence cadence, Climate climate) {
        return switch (cadence) {
            case Cadence.EveryMonths(int months, int min, int max) ->
                new Wording(
                        everyMonths(months) + (max > months ? ", at most " + max + " months" : ""),
                        tousLesMois(months) + (max > months ? ", au plus " + max + " mois" : ""));
            case Cadence.BeforeSeason(String season, var _) ->
                new Wording(
                        "before each " + name(season, climate, Locale.ENGLISH),
                        "avant chaque " + name(season, climate, Locale.FRENCH));
            case Cadence.EachSeason(List<String> seasons) ->
                new Wording(
                        "at each " + names(seasons, " and each ", season -> name(season, climate, Locale.ENGLISH)),
                        "à chaque " + names(seasons, " et à chaque ", season -> name(season, climate, Locale.FRENCH)));
            case Cadence.TimesAYear(int times) ->
                new Wording(
                        times == 1 ? "once a year" : times == 2 ? "twice a year" : times + " times a year",
                        times == 1 ? "une fois par an" : times + " fois par an");
            case Cadence.CheckThenReplace(int check, int cap) ->
                new Wording(
                        "look " + everyMonths(check) + ", replace after " + months(cap) + " at the latest",
                        "vérifier " + tousLesMois(check) + ", remplacer après " + cap + " mois au plus tard");
            case Cadence.LookThenChange(int look, int change) ->
                look == change
                        ? new Wording(
                                "change after " + time(change, "week", "day") + " at the latest",
                                "remplacer après " + time(change, "semaine", "jour") + " au plus tard")
                        : new Wording(
                                "look after " + time(look, "week", "day") + ", change after "
                                        + time(change, "week", "day") + " at the latest",
                                "vérifier après " + time(look, "semaine", "jour") + ", remplacer après "
                                        + time(change, "semaine", "jour") + " au plus tard");
            case Cadence.OnRequest() -> new Wording("on request", "sur demande");
        };
    }

    /** In weeks where it is whole weeks. */
    private static String time(int days, String week, String day) {
        int count = days % 7 == 0 ? days / 7 : days;
        String unit = days % 7 == 0 ? week : day;
        return count + "\u00a0" + unit + (count == 1 ? "" : "s");
    }

    private static String everyMonths(int months) {
        return months == 1 ? "every month" : "every " + months(months);
    }

    private static String months(int months) {
        return months == 1 ? "one month" : months + " months";
    }

    private static String tousLesMois(int months) {
        return months == 1 ? "tous les mois" : "tous les " + months + " mois";
    }

    private static String names(List<String> seasons, String and, Function<String, String> name) {
        return seasons.stream().map(name).collect(Collectors.joining(and));
    }

    private static String name(String season, Climate climate, Locale locale) {
        return climate.find(season).map((Season found) -> found.name(locale)).orElse(season);
    }
}
