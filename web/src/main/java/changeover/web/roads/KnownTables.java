package changeover.web.roads;

import changeover.scheduling.dayplan.routes.Travel.Place;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Tables of roads that were answered, for a day; one that holds all the places of a question answers it. The oldest go. */
final class KnownTables {

    private static final Duration KEPT = Duration.ofDays(1);
    private static final long MOST_CELLS = 6_000_000;

    /** Within a hundred metres is one place, as the season's own map has it. */
    private record Spot(long north, long east) {

        static Spot of(Place place) {
            return new Spot(Math.round(place.latitude() * 1000), Math.round(place.longitude() * 1000));
        }
    }

    private record Table(Map<Spot, Integer> at, int[][] seconds, Instant since) {}

    private final Deque<Table> tables = new ArrayDeque<>();
    private long cells;

    synchronized Optional<int[][]> of(List<Place> places, Instant now) {
        while (!tables.isEmpty() && tables.getLast().since().isBefore(now.minus(KEPT))) {
            drop();
        }
        List<Spot> spots = places.stream().map(Spot::of).toList();
        return tables.stream()
                .filter(table -> table.at().keySet().containsAll(spots))
                .findFirst()
                .map(table -> part(table, spots));
    }

    private static int[][] part(Table table, List<Spot> spots) {
        int[] at = spots.stream()
                .mapToInt(spot -> table.at().getOrDefault(spot, 0))
                .toArray();
        int[][] seconds = new int[at.length][at.length];
        for (int from = 0; from < at.length; from++) {
            for (int to = 0; to < at.length; to++) {
                seconds[from][to] = at[from] == at[to] ? 0 : table.seconds()[at[from]][at[to]];
            }
        }
        return seconds;
    }

    synchronized void keep(List<Place> places, int[][] seconds, Instant now) {
        Map<Spot, Integer> at = new HashMap<>();
        for (int number = 0; number < places.size(); number++) {
            at.putIfAbsent(Spot.of(places.get(number)), number);
        }
        tables.addFirst(new Table(at, seconds, now));
        cells += (long) seconds.length * seconds.length;
        while (cells > MOST_CELLS && tables.size() > 1) {
            drop();
        }
    }

    private void drop() {
        Table oldest = tables.removeLast();
        cells -= (long) oldest.seconds().length * oldest.seconds().length;
    }
}
