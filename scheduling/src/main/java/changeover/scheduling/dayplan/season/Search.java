package changeover.scheduling.dayplan.season;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Lays a season: first each visit where it costs least, the most urgent first; then, round by round, a few neighbours are
 * taken off and laid anew, and what came out better is kept. It is never worse than what it began with, and the same
 * question gives the same answer.
 */
public final class Search {

    private static final long SEED = 20_270_401;
    private static final int NEIGHBOURS = 40;
    /** Minutes of road; whoever is farther is no neighbour. */
    private static final int FARTHEST = 240;

    private static final int MOST_TAKEN = 16;
    private static final int TRIED_AGAIN = 12;

    /** A quarter of an hour of driving, in the measure of the cost. */
    private static final long WARM = 60;

    private final Figures season;
    private final int[][] near;
    private final int all;
    private int rounds;
    private Laid best;

    public Search(SeasonCase asked) {
        season = new Figures(asked);
        near = IntStream.range(0, season.visits).mapToObj(this::nearest).toArray(int[][]::new);
        all = Math.clamp(20L * season.visits, 200, 12_000);
        best = new Laid(season);
    }

    /** The nearest deadlines choose first. */
    public void begin() {
        Laid laid = new Laid(season);
        new Pairs(season).put(laid);
        fill(laid);
        best = laid;
    }

    /** Goes on from an earlier answer, as far as it still holds; what has come since is laid beside it. */
    public void goOn(List<SeasonAnswer.Kept> earlier, int done) {
        Laid laid = new Laid(season);
        new Earlier(season).put(laid, earlier);
        new Pairs(season).put(laid);
        fill(laid);
        best = laid;
        rounds = Math.min(done, all);
    }

    private void fill(Laid laid) {
        for (int visit = 0; visit < season.visits; visit++) {
            if (!laid.has(visit) && season.wanted(visit).people() == 1) {
                Laid.Spot spot = laid.best(visit, season.mayOn[visit], null);
                if (spot != null) {
                    laid.put(visit, spot);
                }
            }
        }
    }

    /** How many rounds there are in all. */
    public int all() {
        return all;
    }

    public int rounds() {
        return rounds;
    }

    public boolean isOver() {
        return rounds >= all || season.visits == 0;
    }

    /** So many visits have no day in the best answer so far. */
    public int without() {
        return best.without();
    }

    /** A few rounds more; they begin from the best answer so far, so that whoever goes on later goes the same way. */
    public void search(int few) {
        Laid current = best;
        for (int round = 0; round < few && !isOver(); round++) {
            rounds++;
            var chance = new SplittableRandom(SEED + rounds);
            Laid trial = current.copy();
            layAnew(trial, takeOff(trial, chance), chance);
            if (trial.nearly(current, WARM * (all - rounds) / all + 1)) {
                current = trial;
            }
            if (trial.betterThan(best)) {
                best = trial;
            }
        }
    }

    /** What it is about. */
    SeasonCase asked() {
        return season.asked;
    }

    /** What has a day in the best answer so far. */
    List<SeasonAnswer.Kept> kept() {
        return new Told(season, best).kept();
    }

    public SeasonAnswer answer() {
        return new Told(season, best).answer();
    }

    private int[] takeOff(Laid laid, SplittableRandom chance) {
        int seed = seed(laid, chance);
        int count = 2 + chance.nextInt(MOST_TAKEN - 1);
        int[] taken = new int[count];
        int number = 0;
        if (laid.take(seed)) {
            taken[number++] = seed;
        }
        for (int at = 0; at < near[seed].length && number < count; at++) {
            int other = near[seed][at];
            if (chance.nextInt(4) > 0 && laid.take(other)) {
                taken[number++] = other;
            }
        }
        return Arrays.copyOf(taken, number);
    }

    /** Half of the time one without a day, so that room is made where somebody waits. */
    private int seed(Laid laid, SplittableRandom chance) {
        int seed = chance.nextInt(season.visits);
        if (laid.without() > 0 && chance.nextInt(2) == 0) {
            for (int step = 0; step < season.visits; step++) {
                int other = (seed + step) % season.visits;
                if (!laid.has(other) && season.mayOn[other].length > 0) {
                    return other;
                }
            }
        }
        return seed;
    }

    private void layAnew(Laid laid, int[] taken, SplittableRandom chance) {
        int[] again = waiting(laid, taken, chance);
        Integer[] order = Arrays.stream(again).boxed().toArray(Integer[]::new);
        int way = chance.nextInt(3);
        int turn = chance.nextInt(Math.max(1, order.length));
        if (way == 0) {
            Arrays.sort(order, (one, other) -> Integer.compare(season.minutes[other], season.minutes[one]));
        } else if (way == 1) {
            Arrays.sort(order, (one, other) -> Integer.compare(season.mayOn[one].length, season.mayOn[other].length));
        }
        for (int at = 0; at < order.length; at++) {
            int visit = order[way == 2 ? (at + turn) % order.length : at];
            Laid.Spot spot = laid.best(visit, season.mayOn[visit], chance);
            if (spot != null) {
                laid.put(visit, spot);
            }
        }
    }

    /** What was taken off, and some of those that had no day before. */
    private int[] waiting(Laid laid, int[] taken, SplittableRandom chance) {
        if (laid.without() == taken.length) {
            return taken;
        }
        int[] again = Arrays.copyOf(taken, taken.length + TRIED_AGAIN);
        int number = taken.length;
        int from = chance.nextInt(season.visits);
        for (int step = 0; step < season.visits && number < again.length; step++) {
            int other = (from + step) % season.visits;
            if (!laid.has(other)
                    && season.wanted(other).people() == 1
                    && season.mayOn[other].length > 0
                    && Arrays.stream(taken).noneMatch(one -> one == other)) {
                again[number++] = other;
            }
        }
        return Arrays.copyOf(again, number);
    }

    /** Its neighbours by the road, by a count of how many are how far: sorting them all would take longer than the search. */
    private int[] nearest(int visit) {
        int[] far = new int[season.visits];
        int[] count = new int[FARTHEST + 1];
        for (int other = 0; other < season.visits; other++) {
            far[other] = Math.min(FARTHEST, season.road(season.place[visit], season.place[other]));
            count[far[other]]++;
        }
        int limit = 0;
        int within = count[0];
        while (limit < FARTHEST && within <= NEIGHBOURS) {
            within += count[++limit];
        }
        int reach = limit;
        return IntStream.concat(
                        IntStream.range(0, season.visits).filter(other -> far[other] < reach),
                        IntStream.range(0, season.visits).filter(other -> far[other] == reach))
                .filter(other -> other != visit)
                .limit(NEIGHBOURS)
                .toArray();
    }
}
