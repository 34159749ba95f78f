package changeover.scheduling.intervals;

import java.util.function.DoublePredicate;

/**
 * Look early enough that the filter has hardly ever turned grey before (the business sets how seldom), and if it is still
 * clean, change it before the chance that it turns grey after that look passes the same setting. Never under a month, never
 * past the longest time.
 *
 * <p>Both are whole weeks, and beyond half a year whole months, rounded down, where neither a month nor the longest time
 * holds them. Who changes without
 * looking changes on the day of the look.
 *
 * @param checkAfterDays from the day the filter was put in
 * @param changeAfterDays likewise, never before the look
 * @param chanceAtCheck the chance that it is grey by the look
 * @param chanceAfterCheck the chance that a filter which the look found clean is grey by the change
 */
public record Rhythm(
        int checkAfterDays,
        Held checkHeldBy,
        int changeAfterDays,
        Held changeHeldBy,
        double chanceAtCheck,
        double chanceAfterCheck) {

    /** What keeps a day from being later, or earlier. */
    public enum Held {
        /** The chance of running dirty. */
        CHANCE,
        /** A month: it turns grey sooner than anybody is asked to look. */
        MONTH,
        /** The longest time that a filter of its kind is left in. */
        LONGEST
    }

    /** @param setting the chance of running dirty that the business accepts: above nought, at most a half */
    public static Rhythm of(Posterior posterior, Limits limits, double setting) {
        if (!(setting > 0 && setting <= 0.5)) {
            throw new IllegalArgumentException(
                    "The accepted chance of running dirty is above nought and at most 0.5, not " + setting + ".");
        }
        double early = last(limits.capDays(), days -> posterior.greyBy(days) <= setting);
        int check = whole(early, limits.floorDays(), limits.capDays());
        double atCheck = posterior.greyBy(check);
        double late = last(limits.capDays(), days -> after(posterior.greyBy(days), atCheck) <= setting);
        int change = whole(late, check, limits.capDays());
        return new Rhythm(
                check,
                held(check, early, limits),
                change,
                held(change, late, limits),
                atCheck,
                after(posterior.greyBy(change), atCheck));
    }

    private static double after(double chance, double before) {
        return before >= 1 ? 1 : Math.max(0, chance - before) / (1 - before);
    }

    /** The last time up to the longest at which it still holds. */
    private static double last(int longest, DoublePredicate holds) {
        if (holds.test(longest)) {
            return longest;
        }
        double low = 0;
        double high = longest;
        while (high - low > 1e-6) {
            double middle = (low + high) / 2;
            if (holds.test(middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static int whole(double days, int least, int longest) {
        if (days >= longest) {
            return longest;
        }
        return Math.clamp(TimeInWords.upTo(days).wholeDays(days), least, longest);
    }

    private static Held held(int day, double wished, Limits limits) {
        if (wished < limits.floorDays()) {
            return Held.MONTH;
        }
        return day >= limits.capDays() ? Held.LONGEST : Held.CHANCE;
    }
}
