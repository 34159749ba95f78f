package changeover.scheduling.intervals;

import changeover.contracts.words.Wording;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Every house fills its filters at its own pace: what was seen there, with a weak belief from elsewhere, says when to look
 * and when to change.
 *
 * @param likeliest the likeliest life of a filter in this home
 * @param likeliestAtTheEdge whether the sights alone say only "so much or more"
 * @param posterior how likely every other life is
 */
public record HouseholdInterval(
        List<Seen> seen,
        Prior prior,
        Limits limits,
        double setting,
        Weibull likeliest,
        boolean likeliestAtTheEdge,
        Posterior posterior,
        Rhythm rhythm) {

    /** A point of the curve: the chance to be grey by then, and between which chances eight likely lives of ten say it lies. */
    public record Point(double days, double chanceGrey, double low, double high) {}

    private static final int POINTS = 41;

    /**
     * @param seen in any order; may be empty unless the prior is flat
     * @param setting the chance of running dirty that the business accepts, 0.15 if it says nothing
     */
    public static HouseholdInterval of(List<Seen> seen, Prior prior, Limits limits, double setting) {
        Posterior posterior = Posterior.of(seen, prior);
        Rhythm rhythm = Rhythm.of(posterior, limits, setting);
        return new HouseholdInterval(
                List.copyOf(seen), prior, limits, setting, posterior.mode(), posterior.atTheEdge(), posterior, rhythm);
    }

    /** "Changed grey at 9 and 10 weeks: check at 7, change at 8 at the latest." */
    public Wording sentence() {
        return IntervalSentence.of(seen, rhythm, limits);
    }

    /** The curve of a picture, from the day it was put in to the longest time or the last sight, whichever is later. */
    public List<Point> curve() {
        double until = Math.max(
                limits.capDays(),
                seen.stream().mapToDouble(Seen::lastDays).max().orElse(0));
        return IntStream.range(0, POINTS)
                .mapToDouble(step -> until * step / (POINTS - 1))
                .mapToObj(days -> new Point(
                        days, posterior.greyBy(days), posterior.greyBy(days, 0.1), posterior.greyBy(days, 0.9)))
                .toList();
    }
}
