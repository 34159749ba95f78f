package changeover.scheduling.intervals;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A sight as it is reckoned with: its logarithms taken once, and how often the very same was seen.
 *
 * @param logFrom logarithm of the last time it was clean; minus infinity when it never was
 * @param logUntil logarithm of the first time it was grey; equal to {@code logFrom} when that day itself was seen, infinite
 *     when it was never grey
 */
record Sight(double logFrom, double logUntil, long times) {

    static List<Sight> of(List<Seen> seen) {
        return seen.stream()
                .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()))
                .entrySet()
                .stream()
                .map(one -> of(one.getKey(), one.getValue()))
                .sorted((one, other) -> one.logFrom == other.logFrom
                        ? Double.compare(one.logUntil, other.logUntil)
                        : Double.compare(one.logFrom, other.logFrom))
                .toList();
    }

    private static Sight of(Seen seen, long times) {
        return switch (seen) {
            case Seen.GreyAt(double days) -> new Sight(Math.log(days), Math.log(days), times);
            case Seen.GreyBetween(double cleanDays, double greyDays) ->
                new Sight(Math.log(cleanDays), Math.log(greyDays), times);
            case Seen.CleanAt(double days) -> new Sight(Math.log(days), Double.POSITIVE_INFINITY, times);
        };
    }

    /** How well a life of that characteristic and shape explains it; minus infinity at worst, never not a number. */
    double logLikelihood(double logScale, double logShape) {
        return times * once(logScale, logShape, Math.exp(logShape));
    }

    private double once(double logScale, double logShape, double shape) {
        double from = shape * (logFrom - logScale);
        if (logUntil == Double.POSITIVE_INFINITY) {
            return -Math.exp(from);
        }
        if (logUntil == logFrom) {
            return logShape - logFrom + from - Math.exp(from);
        }
        return logFrom == Double.NEGATIVE_INFINITY
                ? logTurned(shape * (logUntil - logScale))
                : -Math.exp(from) + logTurned(from + logOfExpm1(shape * (logUntil - logFrom)));
    }

    /** The logarithm of 1 - exp(-x), given the logarithm of x; a tiny x is its own answer. */
    private static double logTurned(double logX) {
        return logX < -36 ? logX : Math.log(-Math.expm1(-Math.exp(logX)));
    }

    /** The logarithm of exp(y) - 1 for y above nought; a large y is its own answer. */
    private static double logOfExpm1(double y) {
        return y > 36 ? y : Math.log(Math.expm1(y));
    }
}
