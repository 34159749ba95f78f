package changeover.scheduling.dayplan;

import java.time.LocalTime;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * What a visit asks of whoever is sent: so many people, these tickets, an hour of the day. What its tasks ask counts all
 * together; what a person wrote for this one visit counts beside it, and their hour stands before that of a task.
 *
 * @param people one or two
 * @param tickets kinds of ticket, all needed
 * @param earliest before which it may not begin; null for any
 * @param latest after which it may not begin; null for any
 */
public record Need(
        int people,
        Set<String> tickets,
        @Nullable LocalTime earliest,
        @Nullable LocalTime latest) {

    public static final Need NOTHING = new Need(1, Set.of(), null, null);

    public Need {
        tickets = Set.copyOf(tickets);
    }

    public boolean isNothing() {
        return people == 1 && tickets.isEmpty() && earliest == null && latest == null;
    }

    /** Both together: the more people, all tickets, the narrower hours. */
    public Need with(Need other) {
        return new Need(
                Math.max(people, other.people),
                union(tickets, other.tickets),
                later(earliest, other.earliest),
                earlier(latest, other.latest));
    }

    /** What stands by the tasks, and what a person wrote for this visit over it. */
    public Need under(Need byHand) {
        boolean hour = byHand.earliest != null || byHand.latest != null;
        Need both = with(byHand);
        return hour ? new Need(both.people, both.tickets, byHand.earliest, byHand.latest) : both;
    }

    private static Set<String> union(Set<String> one, Set<String> other) {
        var all = new TreeSet<>(one);
        all.addAll(other);
        return all;
    }

    private static @Nullable LocalTime later(@Nullable LocalTime one, @Nullable LocalTime other) {
        return one == null || (other != null && other.isAfter(one)) ? other : one;
    }

    private static @Nullable LocalTime earlier(@Nullable LocalTime one, @Nullable LocalTime other) {
        return one == null || (other != null && other.isBefore(one)) ? other : one;
    }
}
