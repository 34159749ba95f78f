package changeover.scheduling.intervals;

/** Where values lie and how far apart, by their weights. */
record Spread(double mean, double variance) {

    /** @param weights sum to 1 */
    static Spread of(double[] values, double[] weights) {
        double mean = 0;
        for (int index = 0; index < values.length; index++) {
            mean += weights[index] * values[index];
        }
        double variance = 0;
        for (int index = 0; index < values.length; index++) {
            variance += weights[index] * (values[index] - mean) * (values[index] - mean);
        }
        return new Spread(mean, variance);
    }
}
