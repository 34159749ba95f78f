package changeover.scheduling.dayplan.change;

import changeover.scheduling.dayplan.change.HeldDay.Held;
import changeover.scheduling.dayplan.season.Roads;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/**
 * Where one visit more fits into a day, the least disturbing first: minutes more on the road, minutes that others begin
 * later, and half an hour for each whose hour moves at all. An hour that stays is never moved, and a lunch that was there
 * is still there.
 */
public final class Insertions {

    private static final int FIVE = 5;
    private static final int A_MOVE = 30;

    /**
     * The visit to be fitted in.
     *
     * @param earliest minute before which it may not begin: not before now
     * @param latest last minute at which it may begin
     */
    public record Wanted(UUID visit, int minutes, Set<String> tickets, int place, int earliest, int latest) {

        public Wanted {
            tickets = Set.copyOf(tickets);
        }
    }

    /** Somebody's hour that would move. */
    public record Moved(UUID visit, int from, int to) {}

    /**
     * One way to fit it in.
     *
     * @param road minutes more on the road; below nought where it is less
     * @param later minutes that others begin later, all together
     */
    public record Offer(UUID technician, int starts, int ends, int road, int later, List<Moved> moved, HeldDay day) {

        public int disturbs() {
            return road + later + A_MOVE * moved.size();
        }
    }

    private Insertions() {}

    public static List<Offer> offers(List<HeldDay> days, Wanted wanted, Roads roads, int most) {
        var offers = new ArrayList<Offer>();
        for (HeldDay day : days) {
            if (day.tickets().containsAll(wanted.tickets())) {
                for (int at = 0; at <= day.held().size(); at++) {
                    offer(day, wanted, roads, at).ifPresent(offers::add);
                }
            }
        }
        offers.sort(Comparator.comparingInt(Offer::disturbs)
                .thenComparingInt(Offer::starts)
                .thenComparing(Offer::technician));
        return offers.stream().limit(most).toList();
    }

    private static Optional<Offer> offer(HeldDay day, Wanted wanted, Roads roads, int at) {
        List<Held> now = day.held();
        int starts = Math.max(wanted.earliest(), five(day.free(at) + roads.minutes(day.place(at), wanted.place())));
        if (starts > wanted.latest()) {
            return Optional.empty();
        }
        var then = new ArrayList<>(now.subList(0, at));
        then.add(new Held(
                wanted.visit(),
                starts,
                starts + wanted.minutes(),
                wanted.place(),
                wanted.tickets(),
                false,
                false,
                wanted.earliest(),
                wanted.latest()));
        var moved = new ArrayList<Moved>();
        for (Held next : now.subList(at, now.size())) {
            Held before = then.getLast();
            int arrives = before.ends() + roads.minutes(before.place(), next.place());
            // What stood too near to the one before it already is not made better by waiting.
            boolean asItStood = before.equals(previous(now, next)) || arrives <= next.starts();
            if (!asItStood && (next.stays() || five(arrives) > next.latest())) {
                return Optional.empty();
            }
            Held moves = asItStood ? next : next.at(five(arrives));
            if (moves.starts() != next.starts()) {
                moved.add(new Moved(next.visit(), next.starts(), moves.starts()));
            }
            then.add(moves);
        }
        HeldDay changed = day.with(then);
        boolean home = changed.back(roads) <= Math.max(day.until(), day.back(roads));
        if (!home || (day.hasLunch(roads) && !changed.hasLunch(roads))) {
            return Optional.empty();
        }
        int later = moved.stream().mapToInt(one -> one.to() - one.from()).sum();
        int road = changed.road(roads) - day.road(roads);
        return Optional.of(new Offer(
                day.technician(), starts, starts + wanted.minutes(), road, later, List.copyOf(moved), changed));
    }

    private static Held previous(List<Held> now, Held next) {
        int at = now.indexOf(next);
        return at == 0 ? next : now.get(at - 1);
    }

    private static int five(int minute) {
        return (minute + FIVE - 1) / FIVE * FIVE;
    }
}
