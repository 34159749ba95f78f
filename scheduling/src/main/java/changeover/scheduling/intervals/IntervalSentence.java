package changeover.scheduling.intervals;

import changeover.contracts.words.Wording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What was seen, and what follows from it, in one sentence: what was seen stands first, so that anybody can judge it. */
final class IntervalSentence {

    private static final int SAID_ONE_BY_ONE = 4;

    private IntervalSentence() {}

    static Wording of(List<Seen> seen, Rhythm rhythm, Limits limits) {
        TimeInWords unit = TimeInWords.between(
                seen.stream().mapToDouble(Seen::firstDays).min().orElse(0),
                seen.stream().mapToDouble(Seen::lastDays).max().orElse(0));
        Wording sights = sights(seen, unit);
        Wording advice = advice(rhythm, limits, seen.isEmpty() ? null : unit);
        return new Wording(
                capital(sights.en()) + ": " + advice.en() + ".", capital(sights.fr()) + "\u00a0: " + advice.fr() + ".");
    }

    private static Wording sights(List<Seen> seen, TimeInWords unit) {
        List<Long> grey = new ArrayList<>();
        List<Wording> between = new ArrayList<>();
        List<Long> clean = new ArrayList<>();
        for (Seen one : seen) {
            switch (one) {
                case Seen.GreyAt(double days) -> grey.add(unit.count(days));
                case Seen.GreyBetween(double cleanDays, double greyDays) ->
                    between.add(between(unit, cleanDays, greyDays));
                case Seen.CleanAt(double days) -> clean.add(unit.count(days));
            }
        }
        List<Wording> all = new ArrayList<>();
        if (!grey.isEmpty()) {
            all.add(times(new Wording("changed grey", "changé gris"), grey, unit));
        }
        all.addAll(looks(between));
        if (!clean.isEmpty()) {
            all.add(times(new Wording("still clean", "encore propre"), clean, unit));
        }
        return all.isEmpty()
                ? new Wording("nothing seen here yet", "rien d’observé ici encore")
                : new Wording(
                        all.stream().map(Wording::en).collect(Collectors.joining("; ")),
                        all.stream().map(Wording::fr).collect(Collectors.joining("; ")));
    }

    private static List<Wording> looks(List<Wording> between) {
        Map<Wording, Long> counted = between.stream()
                .collect(Collectors.groupingBy(Function.identity(), LinkedHashMap::new, Collectors.counting()));
        if (counted.size() > SAID_ONE_BY_ONE) {
            return List.of(new Wording(
                    "turned grey between two looks " + between.size() + " times",
                    "devenu gris entre deux regards " + between.size() + " fois"));
        }
        return counted.entrySet().stream()
                .map(one -> one.getValue() == 1
                        ? one.getKey()
                        : new Wording(
                                one.getKey().en() + ", " + one.getValue() + " times",
                                one.getKey().fr() + ", " + one.getValue() + " fois"))
                .toList();
    }

    private static Wording between(TimeInWords unit, double cleanDays, double greyDays) {
        Wording grey = unit.times(List.of(unit.count(greyDays)));
        long clean = unit.count(cleanDays);
        return cleanDays == 0
                ? new Wording("grey at the first look at " + grey.en(), "gris au premier regard à " + grey.fr())
                : new Wording(
                        "clean at " + clean + ", grey at " + grey.en(), "propre à " + clean + ", gris à " + grey.fr());
    }

    private static Wording times(Wording what, List<Long> counts, TimeInWords unit) {
        List<Long> sorted = counts.stream().sorted().distinct().toList();
        if (counts.size() <= SAID_ONE_BY_ONE) {
            Wording times = unit.times(sorted);
            return new Wording(what.en() + " at " + times.en(), what.fr() + " à " + times.fr());
        }
        Wording last = unit.times(List.of(sorted.getLast()));
        if (sorted.size() == 1) {
            return new Wording(
                    what.en() + " " + counts.size() + " times at " + last.en(),
                    what.fr() + " " + counts.size() + " fois à " + last.fr());
        }
        return new Wording(
                what.en() + " " + counts.size() + " times between " + sorted.getFirst() + " and " + last.en(),
                what.fr() + " " + counts.size() + " fois entre " + sorted.getFirst() + " et " + last.fr());
    }

    private static Wording advice(Rhythm rhythm, Limits limits, @Nullable TimeInWords said) {
        TimeInWords checkUnit = unit(rhythm.checkAfterDays(), limits);
        Wording check = day(rhythm.checkAfterDays(), checkUnit, said);
        boolean once = rhythm.changeAfterDays() == rhythm.checkAfterDays();
        Wording change = day(rhythm.changeAfterDays(), unit(rhythm.changeAfterDays(), limits), once ? said : checkUnit);
        return switch (rhythm.checkHeldBy()) {
            case LONGEST ->
                new Wording(
                        "change at " + change.en() + " at the latest, by "
                                + limits.basis().en(),
                        "remplacer à " + change.fr() + " au plus tard, selon "
                                + limits.basis().fr());
            case MONTH ->
                once
                        ? new Wording(
                                "it turns grey within a month, change it every month",
                                "il devient gris en moins d’un mois, le remplacer chaque mois")
                        : new Wording(
                                "it may turn grey within a month, check every month, change at " + change.en()
                                        + " at the latest",
                                "il peut devenir gris en moins d’un mois, vérifier chaque mois, remplacer à "
                                        + change.fr() + " au plus tard");
            case CHANCE ->
                once
                        ? new Wording("change at " + change.en(), "remplacer à " + change.fr())
                        : new Wording(
                                "check at " + check.en() + ", change at " + change.en() + " at the latest",
                                "vérifier à " + check.fr() + ", remplacer à " + change.fr() + " au plus tard");
        };
    }

    /** A day that a month or the longest time holds is said in months. */
    private static TimeInWords unit(int days, Limits limits) {
        return days <= limits.floorDays() || days >= limits.capDays() ? TimeInWords.MONTHS : TimeInWords.upTo(days);
    }

    /** The unit just said is not repeated. */
    private static Wording day(int days, TimeInWords unit, @Nullable TimeInWords said) {
        String count = String.valueOf(unit.count(days));
        return unit == said ? new Wording(count, count) : unit.times(List.of(unit.count(days)));
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
