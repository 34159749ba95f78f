package changeover.scheduling.dayplan.routes;

import java.util.Arrays;

/** Seconds of driving between any two places of a day; there and back may differ. */
public final class Drives {
    private final int[][] seconds;

    private Drives(int[][] seconds) {
        this.seconds = seconds;
    }

    /** @param seconds from row to column; as many rows as columns, none below zero */
    public static Drives of(int[][] seconds) {
        for (int[] row : seconds) {
            if (row.length != seconds.length || Arrays.stream(row).anyMatch(one -> one < 0)) {
                throw new IllegalArgumentException("Drives are a square of seconds, none below zero");
            }
        }
        return new Drives(Arrays.stream(seconds).map(int[]::clone).toArray(int[][]::new));
    }

    public int places() {
        return seconds.length;
    }

    public int seconds(int from, int to) {
        return seconds[from][to];
    }
}
