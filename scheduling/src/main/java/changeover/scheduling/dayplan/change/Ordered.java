package changeover.scheduling.dayplan.change;

import changeover.scheduling.dayplan.change.HeldDay.Held;
import changeover.scheduling.dayplan.routes.DayRoutes;
import changeover.scheduling.dayplan.routes.Drive;
import changeover.scheduling.dayplan.routes.Drives;
import changeover.scheduling.dayplan.routes.Lunch;
import changeover.scheduling.dayplan.routes.Promised;
import changeover.scheduling.dayplan.routes.Routes;
import changeover.scheduling.dayplan.routes.Stop;
import changeover.scheduling.dayplan.routes.TravelDay;
import changeover.scheduling.dayplan.routes.Turn;
import changeover.scheduling.dayplan.season.Roads;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A technician's day driven in the order with the least road: what stays keeps its hour, everything else begins within its
 * own and not before it can be reached from now on, with a lunch, out from the base and back.
 *
 * @param lunch minute at which it begins; null where none is kept
 * @param leaves minute by which they must leave the base
 * @param back minute
 * @param road minutes on the road
 */
public record Ordered(List<Arrival> arrivals, @Nullable Integer lunch, int leaves, int back, int road) {

    private static final int MINUTE = 60;
    private static final int LUNCH_FIRST = 11 * 60;
    private static final int LUNCH_LAST = 13 * 60 + 30;

    /**
     * @param starts minute
     * @param ends minute
     * @param was minute at which it began before
     */
    public record Arrival(UUID visit, int starts, int ends, int was, int road, boolean stays) {}

    /**
     * What has begun is driven already: the rest is put in order from where they are now. Empty where the hours that stay cannot
     * all be driven to, or something would be left out.
     */
    public static Optional<Ordered> of(HeldDay day, Roads roads, Routes routes) {
        int begun = day.begun();
        List<Arrival> arrivals = new ArrayList<>();
        day.held().subList(0, begun).forEach(held -> arrivals.add(arrival(day, held, held.starts(), arrivals, roads)));
        if (begun == day.held().size()) {
            return Optional.of(new Ordered(arrivals, null, leaves(day, roads), day.back(roads), day.road(roads)));
        }
        DayRoutes answer = routes.of(asked(day, begun, roads));
        if (!answer.leftOut().isEmpty() || answer.drives().size() != 1) {
            return Optional.empty();
        }
        Drive drive = answer.drives().getFirst();
        for (Drive.Arrival one : drive.arrivals()) {
            int starts = (one.starts() + MINUTE - 1) / MINUTE;
            arrivals.add(arrival(day, held(day, one.visit()), starts, arrivals, roads));
        }
        Integer lunch = drive.lunchStarts();
        return Optional.of(new Ordered(
                arrivals,
                lunch == null ? null : lunch / MINUTE,
                begun == 0 ? drive.leaves() / MINUTE : leaves(day, roads),
                drive.back() / MINUTE,
                arrivals.subList(0, begun).stream().mapToInt(Arrival::road).sum() + drive.travel() / MINUTE));
    }

    private static Arrival arrival(HeldDay day, Held held, int starts, List<Arrival> before, Roads roads) {
        int here = before.isEmpty()
                ? day.base()
                : held(day, before.getLast().visit()).place();
        return new Arrival(
                held.visit(),
                starts,
                starts + held.minutes(),
                held.starts(),
                roads.minutes(here, held.place()),
                held.stays());
    }

    private static Held held(HeldDay day, UUID visit) {
        return day.held().stream()
                .filter(other -> other.visit().equals(visit))
                .findFirst()
                .orElseThrow();
    }

    private static int leaves(HeldDay day, Roads roads) {
        return day.held().isEmpty()
                ? day.from()
                : day.held().getFirst().starts()
                        - roads.minutes(day.base(), day.held().getFirst().place());
    }

    private static TravelDay asked(HeldDay day, int begun, Roads roads) {
        List<Held> rest = day.held().subList(begun, day.held().size());
        List<Integer> places = new ArrayList<>();
        places.add(day.base());
        rest.forEach(held -> places.add(held.place()));
        int[][] seconds = new int[places.size()][places.size()];
        for (int from = 0; from < seconds.length; from++) {
            // Out from where they are, back to the base.
            int here = from == 0 ? day.place(begun) : places.get(from);
            for (int to = 0; to < seconds.length; to++) {
                seconds[from][to] = from == to ? 0 : MINUTE * roads.minutes(here, places.get(to));
            }
        }
        List<Stop> stops = new ArrayList<>();
        for (Held held : rest) {
            stops.add(
                    stop(day, held, stops.size() + 1, day.free(begun) + roads.minutes(day.place(begun), held.place())));
        }
        // A day that was given beyond the hours, or before the road from the base, is driven as it was given.
        int free = Math.min(
                day.free(begun),
                rest.stream()
                        .filter(Held::stays)
                        .mapToInt(held -> held.starts() - roads.minutes(day.place(begun), held.place()))
                        .min()
                        .orElse(Integer.MAX_VALUE));
        int last = rest.stream()
                .filter(Held::stays)
                .mapToInt(held -> held.ends() + roads.minutes(held.place(), day.base()))
                .max()
                .orElse(day.until());
        int from = Math.max(0, free);
        Turn turn = new Turn(
                day.technician(),
                0,
                MINUTE * from,
                MINUTE * Math.max(Math.max(day.until(), from), last),
                Set.of(),
                0,
                lunch(day, begun, roads));
        return new TravelDay(List.of(turn), stops, Drives.of(seconds));
    }

    private static Stop stop(HeldDay day, Held held, int place, int opens) {
        int earliest = Math.max(Math.max(0, opens), held.earliest());
        // Whose own hours are over by now begins no later than it would.
        int latest = held.latest() >= earliest ? held.latest() : Math.max(held.starts(), earliest);
        return new Stop(
                held.visit(),
                place,
                MINUTE * earliest,
                MINUTE * latest,
                MINUTE * held.minutes(),
                Set.of(),
                0,
                held.stays() ? new Promised(day.technician(), MINUTE * held.starts()) : null);
    }

    /** Null where none is kept, or where it is over by now. */
    private static @Nullable Lunch lunch(HeldDay day, int begun, Roads roads) {
        boolean noon = day.from() < LUNCH_FIRST && day.until() > LUNCH_LAST;
        if (!noon || day.lunch() == 0 || day.free(begun) > LUNCH_LAST) {
            return null;
        }
        for (int visits = 0; visits <= begun && day.now() > 0; visits++) {
            int free = visits == 0 ? day.from() : day.held().get(visits - 1).ends();
            int leaves = visits == begun
                    ? day.now()
                    : day.held().get(visits).starts()
                            - roads.minutes(
                                    day.place(visits), day.held().get(visits).place());
            if (Math.min(leaves, LUNCH_LAST + day.lunch()) - Math.max(free, LUNCH_FIRST) >= day.lunch()) {
                return null;
            }
        }
        return new Lunch(MINUTE * LUNCH_FIRST, MINUTE * LUNCH_LAST, MINUTE * day.lunch());
    }
}
