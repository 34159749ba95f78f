package changeover.scheduling.dayplan.routes;

import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;

/**
 * A day while it is being laid out: for every turn its stops in order, and for every other stop the place where it costs
 * the least driving among all where every hour is still kept. Stops and turns are numbered as the day lists them.
 */
final class Tours {
    static final int NOWHERE = -1;

    final DayFigures day;
    final int[][] order;
    final int[] length;
    /** The turn of each stop. */
    final int[] turnOf;

    private final int[] load;
    private final int[] driven;
    /** The places of each turn, its base first and last; when each is left at the earliest; the road on from each. */
    private final int[][] places;

    private final int[][] free;
    private final int[][] road;
    /** The latest second at which the place after this one may be reached; lunch not reckoned, here and in what is free. */
    private final int[][] latest;

    private long travel;

    private int bestTurn;
    private int bestAt;

    Tours(DayFigures day) {
        this.day = day;
        this.order = new int[day.turns][day.stops];
        this.length = new int[day.turns];
        this.turnOf = new int[day.stops];
        this.load = new int[day.turns];
        this.driven = new int[day.turns];
        this.places = new int[day.turns][day.stops + 2];
        this.free = new int[day.turns][day.stops + 1];
        this.road = new int[day.turns][day.stops + 1];
        this.latest = new int[day.turns][day.stops + 1];
        Arrays.fill(turnOf, NOWHERE);
        for (int turn = 0; turn < day.turns; turn++) {
            reckon(turn);
        }
    }

    long travel() {
        return travel;
    }

    /** Sets a turn's stops; they must be known to keep every hour. */
    void set(int turn, int[] stops, int count) {
        for (int at = 0; at < length[turn]; at++) {
            if (turnOf[order[turn][at]] == turn) {
                turnOf[order[turn][at]] = NOWHERE;
            }
        }
        System.arraycopy(stops, 0, order[turn], 0, count);
        length[turn] = count;
        for (int at = 0; at < count; at++) {
            turnOf[stops[at]] = turn;
        }
        reckon(turn);
    }

    int positionOf(int stop) {
        int[] stops = order[turnOf[stop]];
        int at = 0;
        while (stops[at] != stop) {
            at++;
        }
        return at;
    }

    /**
     * The turn in which a stop costs least, at a place that {@link #place} then takes; {@link #NOWHERE} when it fits
     * nowhere.
     *
     * @param blink one place in so many is overlooked, so that the next best gets its chance; 0 overlooks none
     */
    int find(int stop, int blink, RandomGenerator chance) {
        bestTurn = NOWHERE;
        int bestPrice = Integer.MAX_VALUE;
        int untried = -1;
        for (int turn = 0; turn < day.turns; turn++) {
            if (!day.may[stop][turn] || load[turn] + day.load[stop] > day.room[turn]) {
                continue;
            }
            if (length[turn] == 0) {
                // Of turns that are alike one that nobody has begun stands for all.
                if (untried == day.kind[turn]) {
                    continue;
                }
                untried = day.kind[turn];
            }
            bestPrice = cheaper(stop, turn, bestPrice, blink, chance);
        }
        return bestTurn;
    }

    /** Puts a stop at the place that was just found for it. */
    void place(int stop) {
        int[] stops = order[bestTurn];
        System.arraycopy(stops, bestAt, stops, bestAt + 1, length[bestTurn] - bestAt);
        stops[bestAt] = stop;
        length[bestTurn]++;
        turnOf[stop] = bestTurn;
        reckon(bestTurn);
    }

    private int cheaper(int stop, int turn, int price, int blink, RandomGenerator chance) {
        int[] there = day.into[day.place[stop]];
        int[] onward = day.drive[day.place[stop]];
        int[] at = places[turn];
        int opens = day.earliest[stop];
        int closes = day.latest[stop];
        int lasts = day.seconds[stop];
        int best = price;
        for (int gap = 0; gap <= length[turn]; gap++) {
            int way = there[at[gap]];
            int begins = Math.max(opens, free[turn][gap] + way);
            if (begins > closes) {
                break;
            }
            int back = onward[at[gap + 1]];
            int more = way + back - road[turn][gap];
            if (more < best
                    && begins + lasts + back <= latest[turn][gap]
                    && (blink == 0 || chance.nextInt(blink) != 0)
                    && (day.lunch[turn] == null || leavesLunch(turn, gap, stop))) {
                best = more;
                bestTurn = turn;
                bestAt = gap;
            }
        }
        return best;
    }

    private boolean leavesLunch(int turn, int at, int stop) {
        int[] with = new int[length[turn] + 1];
        System.arraycopy(order[turn], 0, with, 0, at);
        with[at] = stop;
        System.arraycopy(order[turn], at, with, at + 1, length[turn] - at);
        return day.keeps(turn, with);
    }

    private void reckon(int turn) {
        int[] stops = order[turn];
        int count = length[turn];
        int[] at = places[turn];
        int all = 0;
        int weight = 0;
        at[0] = day.base[turn];
        at[count + 1] = day.base[turn];
        free[turn][0] = day.from[turn];
        for (int number = 0; number < count; number++) {
            int stop = stops[number];
            at[number + 1] = day.place[stop];
            int way = day.drive[at[number]][at[number + 1]];
            road[turn][number] = way;
            all += way;
            weight += day.load[stop];
            free[turn][number + 1] = Math.max(day.earliest[stop], free[turn][number] + way) + day.seconds[stop];
        }
        road[turn][count] = day.drive[at[count]][at[count + 1]];
        all += road[turn][count];
        latest[turn][count] = day.until[turn];
        for (int number = count - 1; number >= 0; number--) {
            int stop = stops[number];
            latest[turn][number] =
                    Math.min(day.latest[stop], latest[turn][number + 1] - road[turn][number + 1] - day.seconds[stop]);
        }
        travel += all - driven[turn];
        driven[turn] = all;
        load[turn] = weight;
    }

    /** The stops of every turn in order. */
    List<int[]> copy() {
        return IntStream.range(0, day.turns)
                .mapToObj(turn -> Arrays.copyOf(order[turn], length[turn]))
                .toList();
    }
}
