package changeover.web.office;

import changeover.contracts.catalogue.Cadence;
import changeover.web.session.Typed;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** How often a plan promises a task where it is not as often as the catalogue says: by months, or so many times a year. */
final class PlanRhythm {

    static final String CATALOGUE = "catalogue";
    static final String MONTHS = "months";
    static final String TIMES = "times";
    static final String KEPT = "kept";

    private static final Set<String> WORDS = Set.of(CATALOGUE, MONTHS, TIMES, KEPT);

    private static final int MOST_MONTHS = 60;
    private static final int MOST_TIMES = 24;

    private PlanRhythm() {}

    static String field(String task) {
        return "often-" + task;
    }

    static String number(String task) {
        return "every-" + task;
    }

    /** Shows a cadence of the plan's own in the form's fields. */
    static void fill(Map<String, List<String>> values, String task, @Nullable Cadence own) {
        if (isKept(own)) {
            values.put(field(task), List.of(KEPT));
        } else if (own instanceof Cadence.EveryMonths every) {
            values.put(field(task), List.of(MONTHS));
            values.put(number(task), List.of(String.valueOf(every.months())));
        } else if (own instanceof Cadence.TimesAYear year) {
            values.put(field(task), List.of(TIMES));
            values.put(number(task), List.of(String.valueOf(year.times())));
        } else {
            values.put(field(task), List.of(CATALOGUE));
        }
    }

    /** Whether it is of a kind that the form cannot write, so that it can only stay as it is. */
    static boolean isKept(@Nullable Cadence own) {
        return switch (own) {
            case null -> false;
            case Cadence.EveryMonths(int months, int min, int max) ->
                min != months || max != months || months > MOST_MONTHS;
            case Cadence.TimesAYear(int times) -> times > MOST_TIMES;
            default -> true;
        };
    }

    /**
     * The cadence that was chosen; a form without the question leaves it as it was.
     *
     * @param before the plan's own cadence so far, null when it followed the catalogue
     */
    static @Nullable Cadence read(Typed typed, String task, @Nullable Cadence before) {
        if (typed.line(field(task), 20) == null) {
            return before;
        }
        return switch (typed.oneOf(field(task), WORDS)) {
            case MONTHS -> Cadence.EveryMonths.exactly(typed.whole(number(task), 1, MOST_MONTHS));
            case TIMES -> new Cadence.TimesAYear(typed.whole(number(task), 1, MOST_TIMES));
            case KEPT -> before;
            default -> null;
        };
    }
}
