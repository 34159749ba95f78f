package changeover.scheduling.intervals;

import java.util.function.DoubleBinaryOperator;

/** Climbs a hill: looks in eight directions, goes to the highest, and halves its step where all are lower. */
record Summit(Box box, DoubleBinaryOperator height) {

    /** Steps of logarithms smaller than this change nothing within a millionth of the answer. */
    private static final double FINE = 1e-8;

    private static final int[][] AROUND = {{1, 0}, {-1, 0}, {0, 1}, {0, -1}, {1, 1}, {-1, -1}, {1, -1}, {-1, 1}};

    /** @return the logarithms of scale and shape of the summit */
    double[] from(double logScale, double logShape, double firstStep) {
        double[] here = {logScale, logShape};
        double best = height.applyAsDouble(here[0], here[1]);
        for (double step = firstStep; step > FINE; ) {
            double[] higher = null;
            for (int[] way : AROUND) {
                double scale = box.clampScale(here[0] + way[0] * step);
                double shape = box.clampShape(here[1] + way[1] * step);
                double there = height.applyAsDouble(scale, shape);
                if (there > best) {
                    best = there;
                    higher = new double[] {scale, shape};
                }
            }
            if (higher == null) {
                step /= 2;
            } else {
                here = higher;
            }
        }
        return here;
    }
}
