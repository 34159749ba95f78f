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
    /** When each stop of a turn begins at the earliest and at the latest; lunch not reckoned. */
    private final int[][] begins;

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
        this.begins = new int[day.turns][day.stops];
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
        int[] stops = order[turn];
        int base = day.base[turn];
        int place = day.place[stop];
        int best = price;
        int before = base;
        int free = day.from[turn];
        for (int at = 0; at <= length[turn]; at++) {
            int begin = Math.max(day.earliest[stop], free + day.drive[before][place]);
            if (begin > day.latest[stop]) {
                break;
            }
            boolean last = at == length[turn];
            int after = last ? base : day.place[stops[at]];
            int more = day.drive[before][place] + day.drive[place][after] - day.drive[before][after];
            if (more < best
                    && begin + day.seconds[stop] + day.drive[place][after] <= latest[turn][at]
                    && (blink == 0 || chance.nextInt(blink) != 0)
                    && (day.lunch[turn] == null || leavesLunch(turn, at, stop))) {
                best = more;
                bestTurn = turn;
                bestAt = at;
            }
            if (!last) {
                before = after;
                free = begins[turn][at] + day.seconds[stops[at]];
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
        int base = day.base[turn];
        int before = base;
        int free = day.from[turn];
        int road = 0;
        int weight = 0;
        for (int at = 0; at < length[turn]; at++) {
            int stop = stops[at];
            int drive = day.drive[before][day.place[stop]];
            road += drive;
            weight += day.load[stop];
            begins[turn][at] = Math.max(day.earliest[stop], free + drive);
            free = begins[turn][at] + day.seconds[stop];
            before = day.place[stop];
        }
        road += day.drive[before][base];
        latest[turn][length[turn]] = day.until[turn];
        int after = base;
        for (int at = length[turn] - 1; at >= 0; at--) {
            int stop = stops[at];
            latest[turn][at] = Math.min(
                    day.latest[stop], latest[turn][at + 1] - day.drive[day.place[stop]][after] - day.seconds[stop]);
            after = day.place[stop];
        }
        travel += road - driven[turn];
        driven[turn] = road;
        load[turn] = weight;
    }

    /** The stops of every turn in order. */
    List<int[]> copy() {
        return IntStream.range(0, day.turns)
                .mapToObj(turn -> Arrays.copyOf(order[turn], length[turn]))
                .toList();
    }
}
