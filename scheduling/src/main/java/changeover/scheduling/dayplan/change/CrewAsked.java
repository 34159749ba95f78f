package changeover.scheduling.dayplan.change;

import changeover.scheduling.dayplan.routes.Drives;
import changeover.scheduling.dayplan.routes.Lunch;
import changeover.scheduling.dayplan.routes.Promised;
import changeover.scheduling.dayplan.routes.Stop;
import changeover.scheduling.dayplan.routes.TravelDay;
import changeover.scheduling.dayplan.routes.Turn;
import changeover.scheduling.dayplan.season.Roads;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/**
 * The days of several technicians as one question: what stays was promised in the name of whoever has it, everything else
 * goes to whoever holds the tickets.
 *
 * @param theirs by the stop's id, whose visit it is now
 */
record CrewAsked(TravelDay day, Map<UUID, Theirs> theirs) {

    private static final int MINUTE = 60;
    private static final int LUNCH_FIRST = 11 * 60;
    private static final int LUNCH_LAST = 13 * 60 + 30;

    record Theirs(UUID technician, HeldDay.Held held) {}

    static CrewAsked of(List<HeldDay> crew, Roads roads) {
        List<Integer> places = new ArrayList<>();
        List<Turn> turns = new ArrayList<>();
        List<Stop> stops = new ArrayList<>();
        Map<UUID, Theirs> theirs = new LinkedHashMap<>();
        int from = crew.stream().mapToInt(HeldDay::from).min().orElse(0);
        for (HeldDay day : crew) {
            turns.add(turn(day, roads, places.size()));
            places.add(day.base());
            for (HeldDay.Held held : day.held()) {
                UUID id = id(day, held);
                stops.add(stop(day, held, id, places.size(), from));
                places.add(held.place());
                theirs.put(id, new Theirs(day.technician(), held));
            }
        }
        int[][] seconds = new int[places.size()][places.size()];
        for (int here = 0; here < seconds.length; here++) {
            for (int there = 0; there < seconds.length; there++) {
                seconds[here][there] = here == there ? 0 : MINUTE * roads.minutes(places.get(here), places.get(there));
            }
        }
        return new CrewAsked(new TravelDay(turns, stops, Drives.of(seconds)), theirs);
    }

    /** Two go to one visit, each in a day of their own. */
    private static UUID id(HeldDay day, HeldDay.Held held) {
        return held.stays()
                ? UUID.nameUUIDFromBytes((held.visit() + " " + day.technician()).getBytes(StandardCharsets.US_ASCII))
                : held.visit();
    }

    /** A day that was given beyond the hours, or before the road from the base, is driven as it was given. */
    private static Turn turn(HeldDay day, Roads roads, int base) {
        List<HeldDay.Held> stay =
                day.held().stream().filter(HeldDay.Held::stays).toList();
        int first = stay.stream()
                .mapToInt(held -> held.starts() - roads.minutes(day.base(), held.place()))
                .min()
                .orElse(day.from());
        int last = stay.stream()
                .mapToInt(held -> held.ends() + roads.minutes(held.place(), day.base()))
                .max()
                .orElse(day.until());
        boolean over = day.from() < LUNCH_FIRST && day.until() > LUNCH_LAST && day.lunch() > 0;
        return new Turn(
                day.technician(),
                base,
                MINUTE * Math.max(0, Math.min(day.from(), first)),
                MINUTE * Math.max(day.until(), last),
                day.tickets(),
                0,
                over ? new Lunch(MINUTE * LUNCH_FIRST, MINUTE * LUNCH_LAST, MINUTE * day.lunch()) : null);
    }

    private static Stop stop(HeldDay day, HeldDay.Held held, UUID id, int place, int from) {
        int earliest = Math.max(Math.max(0, from), held.earliest());
        return new Stop(
                id,
                place,
                MINUTE * earliest,
                MINUTE * Math.max(held.latest(), earliest),
                MINUTE * held.minutes(),
                held.stays() ? Set.of() : held.tickets(),
                0,
                held.stays() ? new Promised(day.technician(), MINUTE * held.starts()) : null);
    }
}
