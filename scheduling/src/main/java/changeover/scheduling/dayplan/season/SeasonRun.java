package changeover.scheduling.dayplan.season;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A run as its rows say it stands.
 *
 * @param visits that waited when it began
 * @param rounds of the search that are behind it
 * @param without how many have no day in the best answer so far
 * @param driving minutes on the road that its days add; nought while it runs
 * @param roads how they were reckoned: crow, table, or crow_for_table where the table of roads did not answer
 * @param accepted how many of its days were given
 */
public record SeasonRun(
        UUID id,
        SeasonQuestion question,
        UUID startedBy,
        Instant startedAt,
        State state,
        @Nullable Instant endedAt,
        int visits,
        int rounds,
        int allRounds,
        int without,
        int driving,
        String roads,
        int accepted) {

    /** How a run stands. */
    public enum State {
        RUNNING,
        HALTED,
        DONE;

        public String code() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    public boolean running() {
        return state == State.RUNNING;
    }
}
