package changeover.scheduling.dayplan.season;

import java.time.LocalDate;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/**
 * A technician of the season.
 *
 * @param tickets the last day that each kind of ticket holds
 * @param base where their days begin and end, as the season's roads number the places
 * @param lunch minutes; nought where none is kept
 * @param tried whether nobody of the kind works here: somebody thought of, to see what one more would bring
 */
public record Hand(UUID id, Map<String, LocalDate> tickets, int base, int lunch, boolean tried) {

    public Hand {
        tickets = Map.copyOf(tickets);
    }

    /** Whether every ticket of these holds on the day. */
    boolean holds(Set<String> needed, LocalDate day) {
        return needed.stream().allMatch(kind -> {
            LocalDate last = tickets.get(kind);
            return last != null && !day.isAfter(last);
        });
    }
}
