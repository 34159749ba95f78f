package changeover.scheduling.dayplan.routes;

import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** A travel day as plain figures, by the number of each stop and turn: what a search asks a million times. */
final class DayFigures {
    final TravelDay asked;
    final int stops;
    final int turns;
    /** Seconds from row to column, and to row from column. */
    final int[][] drive;

    final int[][] into;

    final int[] place;
    final int[] earliest;
    final int[] latest;
    final int[] seconds;
    final int[] load;
    final boolean[] promised;
    final boolean[][] may;

    final int[] base;
    final int[] from;
    final int[] until;
    final int[] room;
    final @Nullable Lunch[] lunch;
    /** Turns of one kind can stand for each other. */
    final int[] kind;

    private record Kind(
            int base,
            int from,
            int until,
            Set<String> tickets,
            int room,
            @Nullable Lunch lunch,
            int own) {}

    DayFigures(TravelDay day) {
        asked = day;
        List<Stop> all = day.stops();
        List<Turn> crew = day.turns();
        stops = all.size();
        turns = crew.size();
        drive = new int[day.drives().places()][day.drives().places()];
        into = new int[drive.length][drive.length];
        for (int from = 0; from < drive.length; from++) {
            for (int to = 0; to < drive.length; to++) {
                drive[from][to] = day.drives().seconds(from, to);
                into[to][from] = drive[from][to];
            }
        }
        place = all.stream().mapToInt(Stop::place).toArray();
        earliest = all.stream().mapToInt(Stop::first).toArray();
        latest = all.stream().mapToInt(Stop::last).toArray();
        seconds = all.stream().mapToInt(Stop::seconds).toArray();
        load = all.stream().mapToInt(Stop::load).toArray();
        promised = new boolean[stops];
        may = new boolean[stops][turns];
        for (int stop = 0; stop < stops; stop++) {
            promised[stop] = all.get(stop).promised() != null;
            for (int turn = 0; turn < turns; turn++) {
                may[stop][turn] = crew.get(turn).may(all.get(stop));
            }
        }
        base = crew.stream().mapToInt(Turn::base).toArray();
        from = crew.stream().mapToInt(Turn::from).toArray();
        until = crew.stream().mapToInt(Turn::until).toArray();
        room = crew.stream().mapToInt(Turn::room).toArray();
        lunch = crew.stream().map(Turn::lunch).toArray(Lunch[]::new);
        kind = kinds(day);
    }

    private static int[] kinds(TravelDay day) {
        Map<Kind, Integer> known = new HashMap<>();
        int[] kinds = new int[day.turns().size()];
        for (int number = 0; number < kinds.length; number++) {
            Turn turn = day.turns().get(number);
            int own = day.promisedBy(turn).isEmpty() ? -1 : number;
            Kind kind =
                    new Kind(turn.base(), turn.from(), turn.until(), turn.tickets(), turn.room(), turn.lunch(), own);
            known.putIfAbsent(kind, known.size());
            kinds[number] = known.getOrDefault(kind, 0);
        }
        return kinds;
    }

    /** No stop in any turn. */
    List<int[]> noOrders() {
        return Collections.nCopies(turns, new int[0]);
    }

    /** What was promised in a turn's name, by the hour. */
    int[] promisedIn(int turn) {
        return IntStream.range(0, stops)
                .filter(stop -> promised[stop] && may[stop][turn])
                .boxed()
                .sorted(Comparator.comparingInt(stop -> earliest[stop]))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    /** Whether a turn keeps every hour, its lunch and all that was promised when it drives in this order. */
    boolean keepsAll(int turn, int[] order) {
        Set<Integer> driven = Arrays.stream(order).boxed().collect(Collectors.toSet());
        return Arrays.stream(promisedIn(turn)).allMatch(driven::contains) && keeps(turn, order);
    }

    /** Whether a turn keeps every hour and its lunch when it drives these stops in this order. */
    boolean keeps(int turn, int[] order) {
        return drive(turn, order).isPresent();
    }

    Optional<Drive> drive(int turn, int[] order) {
        return Drive.of(
                asked,
                asked.turns().get(turn),
                Arrays.stream(order).mapToObj(asked.stops()::get).toList());
    }
}
