package changeover.scheduling.dayplan.change;

import changeover.scheduling.dayplan.change.HeldDay.Held;
import changeover.scheduling.dayplan.season.Roads;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Where one visit more fits into a day, or into the days of two who go together, the least disturbing first: minutes more on the road, minutes that others begin
 * later, and half an hour for each whose hour moves at all. An hour that stays is never moved, and a lunch that was there
 * is still there.
 */
public final class Insertions {

    private static final int FIVE = 5;
    private static final int A_MOVE = 30;

    /**
     * The visit to be fitted in.
     *
     * @param people one, or two who go together; whoever leads holds the tickets
     * @param earliest minute before which it may not begin: not before now
     * @param latest last minute at which it may begin
     */
    public record Wanted(
            UUID visit, int minutes, Set<String> tickets, int place, int people, int earliest, int latest) {

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
     * @param along the day of whoever goes along; null where one goes alone
     */
    public record Offer(
            UUID technician,
            int starts,
            int ends,
            int road,
            int later,
            List<Moved> moved,
            HeldDay day,
            @Nullable HeldDay along) {

        public int disturbs() {
            return road + later + A_MOVE * moved.size();
        }

        public Optional<UUID> second() {
            return Optional.ofNullable(along).map(HeldDay::technician);
        }

        /** Whether whoever goes, or goes along, is on call then and works no other hours. */
        public boolean onCall() {
            return day.onCall() || (along != null && along.onCall());
        }

        private Offer with(Offer second) {
            return new Offer(
                    technician,
                    starts,
                    ends,
                    road + second.road,
                    later + second.later,
                    Stream.concat(moved.stream(), second.moved.stream()).toList(),
                    day,
                    second.day);
        }
    }

    private Insertions() {}

    public static List<Offer> offers(List<HeldDay> days, Wanted wanted, Roads roads, int most) {
        var offers = new ArrayList<Offer>();
        for (HeldDay day : days) {
            if (day.tickets().containsAll(wanted.tickets())) {
                for (int at = 0; at <= day.held().size(); at++) {
                    if (wanted.people() == 1) {
                        offer(day, wanted, roads, at, first(day, wanted, roads, at))
                                .ifPresent(offers::add);
                    } else {
                        together(days, day, wanted, roads, at, offers);
                    }
                }
            }
        }
        offers.sort(Comparator.comparing(Offer::onCall)
                .thenComparingInt(Offer::disturbs)
                .thenComparingInt(Offer::starts)
                .thenComparing(Offer::technician));
        var seen = new HashSet<List<Object>>();
        return offers.stream()
                .filter(one -> seen.add(List.of(one.technician(), one.second(), one.starts(), one.moved())))
                .limit(most)
                .toList();
    }

    /** With each of the others, at the first hour at which both can be there; of two who could both lead, one does. */
    private static void together(
            List<HeldDay> days, HeldDay leads, Wanted wanted, Roads roads, int at, List<Offer> offers) {
        for (HeldDay other : days) {
            boolean twice = other.tickets().containsAll(wanted.tickets())
                    && other.technician().compareTo(leads.technician()) < 0;
            if (twice || other.technician().equals(leads.technician())) {
                continue;
            }
            for (int with = 0; with <= other.held().size(); with++) {
                int there = with;
                int starts = Math.max(first(leads, wanted, roads, at), first(other, wanted, roads, with));
                offer(leads, wanted, roads, at, starts)
                        .flatMap(one ->
                                offer(other, wanted, roads, there, starts).map(one::with))
                        .ifPresent(offers::add);
            }
        }
    }

    private static int first(HeldDay day, Wanted wanted, Roads roads, int at) {
        return Math.max(wanted.earliest(), five(day.free(at) + roads.minutes(day.place(at), wanted.place())));
    }

    private static Optional<Offer> offer(HeldDay day, Wanted wanted, Roads roads, int at, int starts) {
        if (starts > wanted.latest()) {
            return Optional.empty();
        }
        List<Held> now = day.held();
        var then = new ArrayList<>(now.subList(0, at));
        then.add(new Held(
                wanted.visit(),
                starts,
                starts + wanted.minutes(),
                wanted.place(),
                wanted.tickets(),
                wanted.people() > 1,
                false,
                wanted.earliest(),
                wanted.latest(),
                wanted.people()));
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
                day.technician(), starts, starts + wanted.minutes(), road, later, List.copyOf(moved), changed, null));
    }

    private static Held previous(List<Held> now, Held next) {
        int at = now.indexOf(next);
        return at == 0 ? next : now.get(at - 1);
    }

    private static int five(int minute) {
        return (minute + FIVE - 1) / FIVE * FIVE;
    }
}
