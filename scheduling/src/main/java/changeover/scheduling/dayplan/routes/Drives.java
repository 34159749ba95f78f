package changeover.scheduling.dayplan.routes;

import java.util.Arrays;
import java.util.Locale;

/** Seconds of driving between any two places of a day, and how they were found; there and back may differ. */
public final class Drives {

    /** How roads were reckoned. */
    public enum By {
        /** As the crow flies: no table is installed. */
        CROW,
        /** By a table of roads. */
        TABLE,
        /** As the crow flies, since the table of roads has not answered, or not yet. */
        CROW_FOR_TABLE;

        public String code() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    private final int[][] seconds;
    private final By by;

    private Drives(int[][] seconds, By by) {
        this.seconds = seconds;
        this.by = by;
    }

    /** As the crow flies. @param seconds from row to column; as many rows as columns, none below zero */
    public static Drives of(int[][] seconds) {
        return of(seconds, By.CROW);
    }

    public static Drives of(int[][] seconds, By by) {
        for (int[] row : seconds) {
            if (row.length != seconds.length || Arrays.stream(row).anyMatch(one -> one < 0)) {
                throw new IllegalArgumentException("Drives are a square of seconds, none below zero");
            }
        }
        return new Drives(Arrays.stream(seconds).map(int[]::clone).toArray(int[][]::new), by);
    }

    public int places() {
        return seconds.length;
    }

    public By by() {
        return by;
    }

    public Drives by(By other) {
        return new Drives(seconds, other);
    }

    public int seconds(int from, int to) {
        return seconds[from][to];
    }
}
