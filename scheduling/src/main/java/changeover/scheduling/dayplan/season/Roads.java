package changeover.scheduling.dayplan.season;

import changeover.scheduling.dayplan.routes.Drives;
import org.jspecify.annotations.Nullable;

/** Minutes on the road between two places of a season; a home that is on no map is half an hour from everywhere. */
public final class Roads {

    /** The number of every place that is on no map. */
    public static final int UNKNOWN = -1;

    /** Minutes. */
    public static final int FROM_UNKNOWN = 30;

    private final int[][] minutes;
    private final Drives.By by;

    private Roads(int[][] minutes, Drives.By by) {
        this.minutes = minutes;
        this.by = by;
    }

    /** @param drives null where no place is known */
    public static Roads of(@Nullable Drives drives) {
        int places = drives == null ? 0 : drives.places();
        int[][] minutes = new int[places][places];
        for (int from = 0; from < places; from++) {
            for (int to = 0; to < places; to++) {
                minutes[from][to] = drives == null ? 0 : (drives.seconds(from, to) + 59) / 60;
            }
        }
        return new Roads(minutes, drives == null ? Drives.By.CROW : drives.by());
    }

    public Drives.By by() {
        return by;
    }

    public int minutes(int from, int to) {
        return from == UNKNOWN || to == UNKNOWN ? FROM_UNKNOWN : minutes[from][to];
    }
}
