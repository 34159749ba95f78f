package changeover.scheduling.dayplan.routes;

import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * One home to be visited on the day, by somebody who holds every ticket it needs, begun within its hours. Who comes
 * before them waits. What was promised to the customer stands above all of it.
 *
 * @param place where it is, as the day's drives number the places
 * @param earliest the first second of the day at which the work may begin
 * @param latest the last second of the day at which the work may begin
 * @param seconds how long the work takes
 * @param tickets kinds of ticket, all needed
 * @param load what it takes of the van's room; 0 where that does not matter
 * @param promised the technician and the hour the customer was told; null while nothing was
 */
public record Stop(
        UUID visit,
        int place,
        int earliest,
        int latest,
        int seconds,
        Set<String> tickets,
        int load,
        @Nullable Promised promised) {

    public Stop {
        tickets = Set.copyOf(tickets);
        if (earliest < 0 || latest < earliest || seconds < 0 || load < 0) {
            throw new IllegalArgumentException("The stop %s has figures that no day can hold".formatted(visit));
        }
    }

    /** The first second at which it begins when somebody stands at its door at a given one. */
    int begins(int arrived) {
        return Math.max(arrived, first());
    }

    int first() {
        return promised == null ? earliest : promised.starts();
    }

    int last() {
        return promised == null ? latest : promised.starts();
    }
}
