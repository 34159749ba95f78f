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
import org.jspecify.annotations.Nullable;

/**
 * The days of one technician or of several as one question, from now on: what stays was promised in the name of whoever has it,
 * everything else goes to whoever holds the tickets and begins no earlier than somebody can be there. Alone, a technician keeps
 * what they have.
 *
 * @param theirs by the stop's id, whose visit it is now
 */
record DaysAsked(TravelDay day, Map<UUID, Theirs> theirs) {

    private static final int MINUTE = 60;
    private static final int LUNCH_FIRST = 11 * 60;
    private static final int LUNCH_LAST = 13 * 60 + 30;

    record Theirs(UUID technician, HeldDay.Held held) {}

    static DaysAsked of(List<HeldDay> crew, Roads roads) {
        // Out from where somebody is, back to the base: the way from a base and the way to it may differ.
        List<Integer> out = new ArrayList<>();
        List<Integer> into = new ArrayList<>();
        List<Turn> turns = new ArrayList<>();
        List<Stop> stops = new ArrayList<>();
        Map<UUID, Theirs> theirs = new LinkedHashMap<>();
        for (HeldDay day : crew) {
            turns.add(turn(day, roads, into.size()));
            out.add(day.place(day.begun()));
            into.add(day.base());
            for (HeldDay.Held held : rest(day)) {
                int opens = crew.stream()
                        .mapToInt(one -> one.free(one.begun()) + roads.minutes(one.place(one.begun()), held.place()))
                        .min()
                        .orElse(0);
                UUID id = id(day, held);
                stops.add(stop(day, held, id, into.size(), opens, crew.size() == 1 ? Set.of() : held.tickets()));
                out.add(held.place());
                into.add(held.place());
                theirs.put(id, new Theirs(day.technician(), held));
            }
        }
        int[][] seconds = new int[out.size()][into.size()];
        for (int from = 0; from < seconds.length; from++) {
            for (int to = 0; to < seconds.length; to++) {
                seconds[from][to] = from == to ? 0 : MINUTE * roads.minutes(out.get(from), into.get(to));
            }
        }
        return new DaysAsked(new TravelDay(turns, stops, Drives.of(seconds)), theirs);
    }

    /** Two go to one visit, each in a day of their own. */
    private static UUID id(HeldDay day, HeldDay.Held held) {
        return held.stays()
                ? UUID.nameUUIDFromBytes((held.visit() + " " + day.technician()).getBytes(StandardCharsets.US_ASCII))
                : held.visit();
    }

    private static List<HeldDay.Held> rest(HeldDay day) {
        return day.held().subList(day.begun(), day.held().size());
    }

    /** A day that was given beyond the hours, or before the road from the base, is driven as it was given. */
    private static Turn turn(HeldDay day, Roads roads, int base) {
        int begun = day.begun();
        List<HeldDay.Held> stay = rest(day).stream().filter(HeldDay.Held::stays).toList();
        int free = Math.min(
                day.free(begun),
                stay.stream()
                        .mapToInt(held -> held.starts() - roads.minutes(day.place(begun), held.place()))
                        .min()
                        .orElse(Integer.MAX_VALUE));
        int last = stay.stream()
                .mapToInt(held -> held.ends() + roads.minutes(held.place(), day.base()))
                .max()
                .orElse(day.until());
        int from = Math.max(0, free);
        return new Turn(
                day.technician(),
                base,
                MINUTE * from,
                MINUTE * Math.max(Math.max(day.until(), from), last),
                day.tickets(),
                0,
                lunch(day, begun, roads));
    }

    private static Stop stop(HeldDay day, HeldDay.Held held, UUID id, int place, int opens, Set<String> tickets) {
        int earliest = Math.max(Math.max(0, opens), held.earliest());
        // Whose own hours are over by now begins no later than it would.
        int latest = held.latest() >= earliest ? held.latest() : Math.max(held.starts(), earliest);
        return new Stop(
                id,
                place,
                MINUTE * earliest,
                MINUTE * latest,
                MINUTE * held.minutes(),
                tickets,
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
