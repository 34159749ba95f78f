package changeover.web.office;

import changeover.contracts.catalogue.Cadence;
import changeover.contracts.words.Refusal;
import changeover.web.session.Typed;
import java.time.Period;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** How often a task is promised, as a form asks it: one way of six, and the figures of that way. */
final class OwnCadenceForm {

    private static final int LONGEST_MONTHS = 120;
    private static final Set<String> WAYS =
            Set.of("every-months", "before-season", "each-season", "times-a-year", "check-then-replace", "on-request");

    private OwnCadenceForm() {}

    static Cadence read(Typed typed) {
        return switch (typed.oneOf("how", WAYS)) {
            case "every-months" -> everyMonths(typed);
            case "before-season" -> beforeSeason(typed);
            case "each-season" -> {
                List<String> seasons = typed.each("seasons").stream().distinct().toList();
                yield seasons.isEmpty() ? unchosen(typed) : new Cadence.EachSeason(seasons);
            }
            case "times-a-year" -> new Cadence.TimesAYear(typed.whole("times", 1, 52));
            case "check-then-replace" -> {
                int check = typed.whole("check", 1, LONGEST_MONTHS);
                int cap = typed.whole("cap", 1, LONGEST_MONTHS);
                yield check <= cap ? new Cadence.CheckThenReplace(check, cap) : unordered(typed, "cap");
            }
            default -> new Cadence.OnRequest();
        };
    }

    static void fill(Map<String, List<String>> fields, Cadence cadence) {
        switch (cadence) {
            case Cadence.EveryMonths(int months, int min, int max) -> {
                put(fields, "how", "every-months");
                put(fields, "months", String.valueOf(months));
                put(fields, "min", String.valueOf(min));
                put(fields, "max", String.valueOf(max));
            }
            case Cadence.BeforeSeason(String season, Period lead) -> {
                put(fields, "how", "before-season");
                put(fields, "seasons", season);
                put(fields, "leadMonths", String.valueOf(lead.toTotalMonths()));
                put(fields, "leadDays", String.valueOf(lead.getDays()));
            }
            case Cadence.EachSeason(List<String> seasons) -> {
                put(fields, "how", "each-season");
                fields.put("seasons", seasons);
            }
            case Cadence.TimesAYear(int times) -> {
                put(fields, "how", "times-a-year");
                put(fields, "times", String.valueOf(times));
            }
            case Cadence.CheckThenReplace(int check, int cap) -> {
                put(fields, "how", "check-then-replace");
                put(fields, "check", String.valueOf(check));
                put(fields, "cap", String.valueOf(cap));
            }
            case Cadence.LookThenChange _, Cadence.OnRequest _ -> put(fields, "how", "on-request");
        }
    }

    private static Cadence everyMonths(Typed typed) {
        int months = typed.whole("months", 1, LONGEST_MONTHS);
        int min = typed.each("min").isEmpty() ? months : typed.whole("min", 1, LONGEST_MONTHS);
        int max = typed.each("max").isEmpty() ? months : typed.whole("max", 1, LONGEST_MONTHS);
        return min <= months && months <= max ? new Cadence.EveryMonths(months, min, max) : unordered(typed, "months");
    }

    private static Cadence beforeSeason(Typed typed) {
        List<String> seasons = typed.each("seasons");
        Period lead = Period.of(0, lead(typed, "leadMonths", 11), lead(typed, "leadDays", 30));
        if (lead.isZero()) {
            typed.refuse(Refusal.of("typed.missing").at("leadMonths"));
            return new Cadence.OnRequest();
        }
        return seasons.size() == 1 ? new Cadence.BeforeSeason(seasons.getFirst(), lead) : unchosen(typed);
    }

    private static int lead(Typed typed, String field, int most) {
        return typed.each(field).isEmpty() ? 0 : typed.whole(field, 0, most);
    }

    private static Cadence unchosen(Typed typed) {
        typed.refuse(Refusal.of("typed.choose").at("seasons"));
        return new Cadence.OnRequest();
    }

    private static Cadence unordered(Typed typed, String field) {
        typed.refuse(Refusal.of("own-task.months-order").at(field));
        return new Cadence.OnRequest();
    }

    private static void put(Map<String, List<String>> fields, String name, String value) {
        fields.put(name, List.of(value));
    }
}
