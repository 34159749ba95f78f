package changeover.scheduling.dayplan.season;

import changeover.contracts.calendar.Window;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What is asked of a season: its visits on the crew as it stands, or on a crew that is only thought of. Nothing changes
 * by asking.
 *
 * @param days of the season
 * @param first the first day on which anything may be given
 * @param without technicians who are left out
 * @param more how many technicians more are thought of
 * @param moreDays when those would work; null where nobody more is thought of
 * @param moreTickets what those would hold
 * @param idle weekdays on which nobody would work
 */
public record SeasonQuestion(
        UUID season,
        Window days,
        LocalDate first,
        Set<UUID> without,
        int more,
        @Nullable Window moreDays,
        Set<String> moreTickets,
        Set<DayOfWeek> idle) {

    public static final int MOST_MORE = 5;

    public SeasonQuestion {
        without = Set.copyOf(without);
        moreTickets = Set.copyOf(moreTickets);
        idle = Set.copyOf(idle);
        if ((more > 0) != (moreDays != null) || more < 0 || more > MOST_MORE) {
            throw new IllegalArgumentException("So many more, on these days: " + more + ", " + moreDays);
        }
    }

    /** The crew as it stands. */
    public static SeasonQuestion asItIs(UUID season, Window days, LocalDate first) {
        return new SeasonQuestion(season, days, first, Set.of(), 0, null, Set.of(), Set.of());
    }

    /** Whether the crew is another than the one that stands. */
    public boolean isTried() {
        return more > 0 || !without.isEmpty() || !idle.isEmpty();
    }
}
