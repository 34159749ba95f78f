package changeover.scheduling.intervals;

import changeover.scheduling.intervals.Prior.Weak;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * What the business saw in its other homes, with filters of the same thickness and rating, is the weak belief about a home
 * it has not watched yet: the middle of those homes, and as wide as they differ and as little as is known of each.
 *
 * <p>What was believed before counts as one home more, so the first homes move it gently. Three rounds of expectation and
 * maximum; the belief never gets narrower than a factor of 1.25.
 */
public final class OtherHomes {

    private static final int ROUNDS = 3;
    private static final double NARROWEST = 1.25;

    private OtherHomes() {}

    /** @param homes what was seen in each; homes without sights say nothing */
    public static Weak belief(List<List<Seen>> homes, Weak before) {
        List<List<Seen>> watched =
                homes.stream().filter(home -> !home.isEmpty()).toList();
        Weak belief = before;
        for (int round = 0; round < ROUNDS && !watched.isEmpty(); round++) {
            Weak now = belief;
            List<Posterior> homesNow =
                    watched.stream().map(home -> Posterior.of(home, now)).toList();
            Spread scale = together(homesNow, Posterior::logScale, before.scaleDays(), before.scaleFactor());
            Spread shape = together(homesNow, Posterior::logShape, before.shape(), before.shapeFactor());
            belief = new Weak(Math.exp(scale.mean()), factor(scale), Math.exp(shape.mean()), factor(shape));
        }
        return belief;
    }

    private static Spread together(
            List<Posterior> homes, Function<Posterior, Spread> part, double middle, double factor) {
        Spread before = new Spread(Math.log(middle), Math.log(factor) * Math.log(factor));
        List<Spread> all =
                Stream.concat(Stream.of(before), homes.stream().map(part)).toList();
        double mean = all.stream().mapToDouble(Spread::mean).average().orElseThrow();
        double variance = all.stream()
                .mapToDouble(one -> one.variance() + (one.mean() - mean) * (one.mean() - mean))
                .average()
                .orElseThrow();
        return new Spread(mean, variance);
    }

    private static double factor(Spread spread) {
        return Math.max(NARROWEST, Math.exp(Math.sqrt(spread.variance())));
    }
}
