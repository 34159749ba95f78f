package changeover.scheduling.dayplan.routes;

import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * One technician's working day: out from a base and back to it within their hours, with the tickets they hold.
 *
 * @param base where the day begins and ends, as the day's drives number the places
 * @param from second of the day before which nobody leaves
 * @param until second of the day by which they are back, lunch included
 * @param room what the van holds, in the stops' own measure
 * @param lunch null where none is kept
 */
public record Turn(
        UUID technician,
        int base,
        int from,
        int until,
        Set<String> tickets,
        int room,
        @Nullable Lunch lunch) {

    public Turn {
        tickets = Set.copyOf(tickets);
        if (from < 0 || until < from || room < 0) {
            throw new IllegalArgumentException("The turn of %s has figures that no day can hold".formatted(technician));
        }
    }

    /** Whether this technician may be sent there: to whom was promised, else to whoever holds the tickets. */
    boolean may(Stop stop) {
        Promised promised = stop.promised();
        return promised == null
                ? tickets.containsAll(stop.tickets())
                : promised.technician().equals(technician);
    }
}
