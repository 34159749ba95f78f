package changeover.scheduling.dayplan.change;

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
 * own, with a lunch, out from the base and back.
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

    /** Empty where the hours that stay cannot all be driven to, or something would be left out. */
    public static Optional<Ordered> of(HeldDay day, Roads roads, Routes routes) {
        DayRoutes answer = routes.of(asked(day, roads));
        if (!answer.leftOut().isEmpty() || answer.drives().size() != 1) {
            return Optional.empty();
        }
        Drive drive = answer.drives().getFirst();
        List<Arrival> arrivals = new ArrayList<>();
        int here = day.base();
        for (Drive.Arrival one : drive.arrivals()) {
            HeldDay.Held held = day.held().stream()
                    .filter(other -> other.visit().equals(one.visit()))
                    .findFirst()
                    .orElseThrow();
            int starts = (one.starts() + MINUTE - 1) / MINUTE;
            arrivals.add(new Arrival(
                    held.visit(),
                    starts,
                    starts + held.minutes(),
                    held.starts(),
                    roads.minutes(here, held.place()),
                    held.stays()));
            here = held.place();
        }
        Integer lunch = drive.lunchStarts();
        return Optional.of(new Ordered(
                arrivals,
                lunch == null ? null : lunch / MINUTE,
                drive.leaves() / MINUTE,
                drive.back() / MINUTE,
                drive.travel() / MINUTE));
    }

    private static TravelDay asked(HeldDay day, Roads roads) {
        List<Integer> places = new ArrayList<>();
        places.add(day.base());
        day.held().forEach(held -> places.add(held.place()));
        int[][] seconds = new int[places.size()][places.size()];
        for (int from = 0; from < seconds.length; from++) {
            for (int to = 0; to < seconds.length; to++) {
                seconds[from][to] = from == to ? 0 : MINUTE * roads.minutes(places.get(from), places.get(to));
            }
        }
        List<Stop> stops = new ArrayList<>();
        for (int at = 0; at < day.held().size(); at++) {
            stops.add(stop(day, day.held().get(at), at + 1));
        }
        boolean over = day.from() < LUNCH_FIRST && day.until() > LUNCH_LAST;
        Lunch lunch = over && day.lunch() > 0
                ? new Lunch(MINUTE * LUNCH_FIRST, MINUTE * LUNCH_LAST, MINUTE * day.lunch())
                : null;
        // A day that was given beyond the hours, or before the road from the base, is driven as it was given.
        int first = day.held().stream()
                .filter(HeldDay.Held::stays)
                .mapToInt(held -> held.starts() - roads.minutes(day.base(), held.place()))
                .min()
                .orElse(day.from());
        int last = day.held().stream()
                .filter(HeldDay.Held::stays)
                .mapToInt(held -> held.ends() + roads.minutes(held.place(), day.base()))
                .max()
                .orElse(day.until());
        Turn turn = new Turn(
                day.technician(),
                0,
                MINUTE * Math.max(0, Math.min(day.from(), first)),
                MINUTE * Math.max(day.until(), last),
                Set.of(),
                0,
                lunch);
        return new TravelDay(List.of(turn), stops, Drives.of(seconds));
    }

    private static Stop stop(HeldDay day, HeldDay.Held held, int place) {
        return new Stop(
                held.visit(),
                place,
                MINUTE * Math.max(Math.max(0, day.from()), held.earliest()),
                MINUTE * Math.max(held.latest(), Math.max(day.from(), held.earliest())),
                MINUTE * held.minutes(),
                Set.of(),
                0,
                held.stays() ? new Promised(day.technician(), MINUTE * held.starts()) : null);
    }
}
