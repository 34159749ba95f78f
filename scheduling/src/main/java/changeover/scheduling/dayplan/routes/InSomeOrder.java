package changeover.scheduling.dayplan.routes;

import java.util.random.RandomGenerator;

/**
 * In which order stops are put back into a day: at random, the heaviest, the farthest, the nearest, those with the fewest
 * hours, the earliest or the latest first, by turns and by chance.
 */
final class InSomeOrder {
    /** How often each order is taken, the random one first. */
    private static final int[] WEIGHTS = {4, 4, 2, 1, 2, 2, 2};

    private static final int ALL = 17;

    private final int[][] ranks;

    InSomeOrder(DayFigures day) {
        ranks = new int[WEIGHTS.length][day.stops];
        for (int stop = 0; stop < day.stops; stop++) {
            int far = day.turns == 0 ? 0 : day.drive[day.base[0]][day.place[stop]];
            ranks[1][stop] = -day.load[stop];
            ranks[2][stop] = -far;
            ranks[3][stop] = far;
            ranks[4][stop] = day.latest[stop] - day.earliest[stop];
            ranks[5][stop] = day.earliest[stop];
            ranks[6][stop] = -day.latest[stop];
        }
    }

    void sort(int[] stops, int count, RandomGenerator chance) {
        for (int at = count - 1; at > 0; at--) {
            int other = chance.nextInt(at + 1);
            int stop = stops[at];
            stops[at] = stops[other];
            stops[other] = stop;
        }
        int drawn = chance.nextInt(ALL);
        int which = 0;
        while (drawn >= WEIGHTS[which]) {
            drawn -= WEIGHTS[which++];
        }
        if (which == 0) {
            return;
        }
        int[] rank = ranks[which];
        for (int at = 1; at < count; at++) {
            int stop = stops[at];
            int to = at;
            while (to > 0 && rank[stops[to - 1]] > rank[stop]) {
                stops[to] = stops[to - 1];
                to--;
            }
            stops[to] = stop;
        }
    }
}
