package changeover.scheduling.supply;

import changeover.contracts.calendar.Window;
import java.time.YearMonth;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;

/**
 * How much of one part the year needs, and in which months: the year is played many times, each time with other luck, and the
 * same question always gives the same answer.
 *
 * @param months in order, those without any use left out
 */
public record PartNeed(Range year, Map<YearMonth, Range> months) {

    private static final int PLAYED = 400;

    /** @param seed what tells this part from others, so that their luck differs */
    public static PartNeed of(List<Use> uses, Window year, long seed) {
        Map<YearMonth, long[]> byMonth = new TreeMap<>();
        long[] whole = new long[PLAYED];
        for (int played = 0; played < PLAYED; played++) {
            int which = played;
            var chance = new SplittableRandom(seed * 1_000_003 + played);
            for (Use use : uses) {
                use.inOneYear(year, chance, (day, thousandths) -> {
                    byMonth.computeIfAbsent(YearMonth.from(day), _ -> new long[PLAYED])[which] += thousandths;
                    whole[which] += thousandths;
                });
            }
        }
        Map<YearMonth, Range> months = new LinkedHashMap<>();
        byMonth.forEach((month, quantities) -> {
            Range range = Range.of(quantities);
            if (!range.isNothing()) {
                months.put(month, range);
            }
        });
        return new PartNeed(Range.of(whole), months);
    }
}
