package changeover.scheduling.intervals;

import java.util.List;

/** What is believed of a home's filter before anything was seen there. */
public sealed interface Prior {

    /** Shapes outside are not looked at: below, a new filter would be the dirtiest; above, all lives are one day. */
    double LEAST_SHAPE = 0.2;

    double LARGEST_SHAPE = 25;

    /**
     * Nothing is believed: every characteristic life within twenty times of what was seen, and every shape from 0.2 to 25,
     * is as likely as any other (in logarithms). Needs at least one thing seen.
     */
    record Flat() implements Prior {}

    /**
     * A weak belief, which a few sights of the home's own outweigh.
     *
     * @param scaleDays the middle of the characteristic life
     * @param scaleFactor two homes of three lie between the middle divided and multiplied by it; above 1
     * @param shape the middle of the shape
     * @param shapeFactor likewise; above 1
     */
    record Weak(double scaleDays, double scaleFactor, double shape, double shapeFactor) implements Prior {
        public Weak {
            boolean sound = scaleDays > 0
                    && scaleDays <= Seen.LONGEST_DAYS
                    && shape >= LEAST_SHAPE
                    && shape <= LARGEST_SHAPE
                    && scaleFactor > 1
                    && scaleFactor <= 100
                    && shapeFactor > 1
                    && shapeFactor <= 100;
            if (!sound) {
                throw new IllegalArgumentException("A weak prior needs a scale above nought, a shape from 0.2 to 25"
                        + " and factors above 1 and at most 100.");
            }
        }
    }

    Prior FLAT = new Flat();

    /**
     * Before any home was watched: the middle of the characteristic life is as long as its kind is left in by published
     * advice, and a household's filters are alike, since the same house fills them (our judgement: two homes of three
     * within a factor of 1.6, shape 5 within a factor of 1.5).
     */
    static Weak ofTheTrade(Limits limits) {
        return new Weak(limits.capDays(), 1.6, 5, 1.5);
    }

    /** How much is believed in that life, up to a constant. */
    default double logDensity(double logScale, double logShape) {
        return switch (this) {
            case Flat() -> 0;
            case Weak(double scaleDays, double scaleFactor, double shape, double shapeFactor) ->
                -square((logScale - Math.log(scaleDays)) / Math.log(scaleFactor)) / 2
                        - square((logShape - Math.log(shape)) / Math.log(shapeFactor)) / 2;
        };
    }

    /** Where the lives lie that are worth looking at. */
    default Box box(List<Seen> seen) {
        double first = Math.log(seen.stream().mapToDouble(Seen::firstDays).min().orElse(1));
        double last = Math.log(seen.stream().mapToDouble(Seen::lastDays).max().orElse(1));
        return switch (this) {
            case Flat() -> {
                if (seen.isEmpty()) {
                    throw new IllegalArgumentException("With a flat prior at least one thing must have been seen.");
                }
                yield new Box(
                        first - Math.log(20), last + Math.log(20), Math.log(LEAST_SHAPE), Math.log(LARGEST_SHAPE));
            }
            case Weak(double scaleDays, double scaleFactor, double shape, double shapeFactor) -> {
                double low = Math.log(scaleDays) - 6 * Math.log(scaleFactor);
                double high = Math.log(scaleDays) + 6 * Math.log(scaleFactor);
                yield new Box(
                        seen.isEmpty() ? low : Math.min(low, first - 1),
                        seen.isEmpty() ? high : Math.max(high, last + 1),
                        Math.max(Math.log(LEAST_SHAPE), Math.log(shape) - 6 * Math.log(shapeFactor)),
                        Math.min(Math.log(LARGEST_SHAPE), Math.log(shape) + 6 * Math.log(shapeFactor)));
            }
        };
    }

    private static double square(double x) {
        return x * x;
    }
}
