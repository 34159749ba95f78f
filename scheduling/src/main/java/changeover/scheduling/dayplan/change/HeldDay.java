package changeover.scheduling.dayplan.change;

import changeover.scheduling.dayplan.season.Roads;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.UUID;

/**
 * A technician's day as it stands, in minutes of the day.
 *
 * @param tickets that hold on the day
 * @param base where the day begins and ends, as the roads number the places
 * @param until minute by which they are back
 * @param lunch minutes; nought where none is kept
 * @param now minute before which nobody sets out any more; nought on a day to come
 * @param onCall whether these are hours in which they are on call, not those that they work
 */
public record HeldDay(
        UUID technician,
        Set<String> tickets,
        int base,
        int from,
        int until,
        int lunch,
        int now,
        boolean onCall,
        List<Held> held) {

    private static final int LUNCH_FIRST = 11 * 60;
    private static final int LUNCH_LAST = 14 * 60;

    /**
     * A visit with its hour.
     *
     * @param stays whether its hour may not move: the customer was told, it has begun, or two go there
     * @param told whether the customer was told it
     * @param earliest minute before which it may not begin
     * @param latest last minute at which it may begin
     * @param people who must still be found for it when this technician falls away: two where nobody goes along yet
     */
    public record Held(
            UUID visit,
            int starts,
            int ends,
            int place,
            Set<String> tickets,
            boolean stays,
            boolean told,
            int earliest,
            int latest,
            int people) {

        public Held {
            tickets = Set.copyOf(tickets);
        }

        public int minutes() {
            return ends - starts;
        }

        Held at(int newStarts) {
            return new Held(
                    visit, newStarts, newStarts + minutes(), place, tickets, stays, told, earliest, latest, people);
        }
    }

    public HeldDay {
        tickets = Set.copyOf(tickets);
        held = held.stream()
                .sorted(Comparator.comparingInt(Held::starts).thenComparing(Held::visit))
                .toList();
    }

    HeldDay with(List<Held> other) {
        return new HeldDay(technician, tickets, base, from, until, lunch, now, onCall, other);
    }

    /** Minutes on the road, out from the base and back. */
    public int road(Roads roads) {
        int road = 0;
        int here = base;
        for (Held one : held) {
            road += roads.minutes(here, one.place());
            here = one.place();
        }
        return held.isEmpty() ? 0 : road + roads.minutes(here, base);
    }

    /** The minute at which they may set out to somewhere else after so many visits: never before now. */
    int free(int visits) {
        return Math.max(now, visits == 0 ? from : held.get(visits - 1).ends());
    }

    /** Where they are after so many visits. */
    int place(int visits) {
        return visits == 0 ? base : held.get(visits - 1).place();
    }

    /** How many of the visits have begun by now. */
    int begun() {
        return Math.toIntExact(held.stream().filter(one -> one.starts() < now).count());
    }

    /** When they are back. */
    int back(Roads roads) {
        return held.isEmpty()
                ? from
                : held.getLast().ends() + roads.minutes(held.getLast().place(), base);
    }

    /** Whether somewhere about noon a lunch fits between the end of one visit and the road to the next. */
    boolean hasLunch(Roads roads) {
        if (lunch == 0 || until <= LUNCH_LAST || from >= LUNCH_FIRST) {
            return true;
        }
        int free = from;
        int here = base;
        for (Held one : held) {
            if (fits(free, one.starts() - roads.minutes(here, one.place()))) {
                return true;
            }
            free = one.ends();
            here = one.place();
        }
        return fits(free, Math.max(until, back(roads)) - roads.minutes(here, base));
    }

    private boolean fits(int free, int leaves) {
        return Math.min(leaves, LUNCH_LAST) - Math.max(free, LUNCH_FIRST) >= lunch;
    }

    /** One visit less. */
    HeldDay without(UUID visit) {
        List<Held> left = new ArrayList<>(held);
        left.removeIf(one -> one.visit().equals(visit));
        return with(left);
    }
}
