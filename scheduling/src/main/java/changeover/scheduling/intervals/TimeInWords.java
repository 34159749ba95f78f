package changeover.scheduling.intervals;

import changeover.contracts.words.Wording;
import java.util.List;
import java.util.stream.Collectors;

/** Times since a filter was put in, in the unit that people count them in: days to a fortnight, weeks to half a year, then months. */
public enum TimeInWords {
    DAYS(1, "day", "days", "jour", "jours"),
    WEEKS(7, "week", "weeks", "semaine", "semaines"),
    MONTHS(Limits.MONTH_DAYS, "month", "months", "mois", "mois");

    private final double days;
    private final String one;
    private final String many;
    private final String oneFr;
    private final String manyFr;

    TimeInWords(double days, String one, String many, String oneFr, String manyFr) {
        this.days = days;
        this.one = one;
        this.many = many;
        this.oneFr = oneFr;
        this.manyFr = manyFr;
    }

    /** {@code 7 weeks}, in the unit that suits a time of that length. */
    public static Wording of(double days) {
        TimeInWords unit = upTo(days);
        return unit.times(List.of(unit.count(days)));
    }

    static TimeInWords upTo(double longestDays) {
        if (longestDays < 14) {
            return DAYS;
        }
        return longestDays < 27 * 7 ? WEEKS : MONTHS;
    }

    /** The unit for times of which none is said as nought. */
    static TimeInWords between(double shortestDays, double longestDays) {
        TimeInWords unit = upTo(longestDays);
        while (unit != DAYS && unit.count(shortestDays) == 0) {
            unit = values()[unit.ordinal() - 1];
        }
        return unit;
    }

    /** The whole units that fit in, as whole days. */
    int wholeDays(double time) {
        return (int) (Math.floor(time / days + 1e-9) * days);
    }

    long count(double time) {
        return Math.round(time / days);
    }

    /** {@code 9 and 10 weeks}; equal times once. */
    Wording times(List<Long> counts) {
        String last = String.valueOf(counts.getLast());
        String before = counts.subList(0, counts.size() - 1).stream()
                .map(String::valueOf)
                .collect(Collectors.joining(", "));
        boolean single = counts.getLast() < 2;
        Wording unit = new Wording(counts.getLast() == 1 ? one : many, single ? oneFr : manyFr);
        String gap = "\u00a0";
        return before.isEmpty()
                ? new Wording(last + gap + unit.en(), last + gap + unit.fr())
                : new Wording(before + " and " + last + gap + unit.en(), before + " et " + last + gap + unit.fr());
    }
}
