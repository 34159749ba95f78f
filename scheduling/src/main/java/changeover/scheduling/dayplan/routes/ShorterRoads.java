package changeover.scheduling.dayplan.routes;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * A day's roads made shorter: again and again strings of neighbouring stops are taken out of their turns and put back
 * where they cost least; what came out longer is kept now and then at first, less and less towards the end. The method is
 * the slack induction by string removals of J. Christiaens and G. Vanden Berghe, Transportation Science 54 (2020).
 * Promised hours are never taken out.
 */
final class ShorterRoads {
    /** Stops taken out in one round on average, the longest string, and one place in so many is overlooked. */
    private static final int AVERAGE_OUT = 10;

    private static final int LONGEST_STRING = 10;
    private static final int BLINK = 100;
    /** What is left of the first warmth at the end. */
    private static final double COLD = 0.005;

    private static final int ONE_MORE_STAYS = 100;
    private static final int ROUNDS_A_LOOK = 64;

    private final DayFigures day;
    private final Tours tours;
    private final SplittableRandom chance = new SplittableRandom(1987);
    private final int[][] near;

    private final int longestWay;

    private final int[] out;
    private int outCount;
    private final int[] rest;
    private final InSomeOrder inSomeOrder;

    private final int[][] kept;
    private final int[] keptLength;
    private final int[] keptIn;
    private final int[] touched;
    private int touchedCount;
    private @Nullable List<int[]> toBeat;
    private long toBeatTravel;
    private int round;

    ShorterRoads(DayFigures day) {
        this.day = day;
        this.tours = new Tours(day);
        this.near = IntStream.range(0, day.stops).mapToObj(this::byNearness).toArray(int[][]::new);
        this.out = new int[day.stops];
        this.rest = new int[day.stops];
        this.inSomeOrder = new InSomeOrder(day);
        this.kept = new int[day.turns][day.stops];
        this.keptLength = new int[day.turns];
        this.keptIn = new int[day.turns];
        this.touched = new int[day.turns];
        this.longestWay =
                Arrays.stream(day.drive).flatMapToInt(Arrays::stream).max().orElse(0);
        Arrays.fill(keptIn, -1);
    }

    private int[] byNearness(int stop) {
        int[] from = day.drive[day.place[stop]];
        return IntStream.range(0, day.stops)
                .boxed()
                .sorted(Comparator.comparingInt(other -> other == stop ? -1 : from[day.place[other]]))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    /** Begins from an order that somebody else found; a turn of it that does not keep its hours is begun anew. */
    void begin(List<int[]> orders) {
        round++;
        touchedCount = 0;
        for (int turn = 0; turn < day.turns; turn++) {
            int[] order = day.keepsAll(turn, orders.get(turn)) ? orders.get(turn) : day.promisedIn(turn);
            tours.set(turn, order, order.length);
        }
        outCount = 0;
        for (int stop = 0; stop < day.stops; stop++) {
            if (tours.turnOf[stop] == Tours.NOWHERE) {
                out[outCount++] = stop;
            }
        }
        putBack(0);
    }

    /**
     * Begins anew beside orders that somebody else found, which are what there is to beat; from them only when insertion
     * leaves more stops out, since a search that begins in another's valley seldom climbs out of it.
     */
    void beginBeside(List<int[]> others) {
        begin(others);
        List<int[]> known = tours.copy();
        int out = outCount;
        long travel = tours.travel();
        begin(day.noOrders());
        if (out < outCount) {
            begin(others);
        } else if (out == outCount && travel < tours.travel()) {
            toBeat = known;
            toBeatTravel = travel;
        }
    }

    /** Rounds after which a day of this size has hardly a shorter road left: a small one is finished before its time. */
    long enough() {
        return 5_000 + 5L * day.stops * day.stops * day.stops;
    }

    /** Searches for so long, if any time is left, and gives the best it saw: the fewest stops out, then the shortest roads. */
    List<int[]> search(long nanoseconds, long rounds) {
        long until = System.nanoTime() + nanoseconds;
        List<int[]> found = toBeat == null ? tours.copy() : toBeat;
        int fewest = outCount;
        long shortest = toBeat == null ? tours.travel() : toBeatTravel;
        long current = price();
        double warm = tours.travel() / Math.max(1.0, day.stops);
        double temperature = warm;
        for (long done = 0; done < rounds && day.stops > 0; done++) {
            if (done % ROUNDS_A_LOOK == 0) {
                long left = Math.min(until - System.nanoTime(), nanoseconds);
                if (left <= 0) {
                    break;
                }
                temperature =
                        warm * Math.pow(COLD, 1 - Math.min(left / (double) nanoseconds, 1 - done / (double) rounds));
            }
            round++;
            touchedCount = 0;
            int outBefore = outCount;
            int[] before = outBefore == 0 ? NONE : Arrays.copyOf(out, outBefore);
            takeOut();
            putBack(BLINK);
            long price = price();
            if (price < current - temperature * Math.log(chance.nextDouble(Double.MIN_NORMAL, 1))) {
                current = price;
                if (outCount < fewest || (outCount == fewest && tours.travel() < shortest)) {
                    fewest = outCount;
                    shortest = tours.travel();
                    found = tours.copy();
                }
            } else {
                undo();
                outCount = outBefore;
                System.arraycopy(before, 0, out, 0, outBefore);
            }
        }
        return found;
    }

    /** While searching, a stop left out weighs as much as the longest way there and back: enough to be tried elsewhere. */
    private long price() {
        return tours.travel() + outCount * 2L * longestWay;
    }

    private static final int[] NONE = {};

    private void takeOut() {
        int placed = day.stops - outCount;
        if (placed == 0) {
            return;
        }
        int busy = 0;
        for (int count : tours.length) {
            busy += count > 0 ? 1 : 0;
        }
        double longest = Math.min(LONGEST_STRING, placed / (double) busy);
        double most = 4.0 * AVERAGE_OUT / (1 + longest) - 1;
        int strings = (int) (chance.nextDouble() * most + 1);
        int seed = chance.nextInt(day.stops);
        for (int stop : near[seed]) {
            int turn = tours.turnOf[stop];
            if (turn == Tours.NOWHERE || keptIn[turn] == round) {
                continue;
            }
            double limit = Math.min(tours.length[turn], longest);
            cut(turn, tours.positionOf(stop), (int) (chance.nextDouble() * limit + 1));
            if (--strings == 0) {
                return;
            }
        }
    }

    /** Takes a string round a stop out of its turn; half of the time some stops within it stay. */
    private void cut(int turn, int at, int count) {
        keep(turn);
        int all = tours.length[turn];
        int stays = 0;
        if (count > 1 && count < all && chance.nextInt(2) == 0) {
            do {
                stays++;
            } while (count + stays < all && chance.nextInt(ONE_MORE_STAYS) == 0);
        }
        int span = count + stays;
        int first = chance.nextInt(Math.max(0, at - span + 1), Math.min(at, all - span) + 1);
        int stayFrom = first + (stays == 0 ? span : 1 + chance.nextInt(count));
        int[] stops = tours.order[turn];
        int remain = 0;
        for (int place = 0; place < all; place++) {
            boolean goes = place >= first
                    && place < first + span
                    && !(place >= stayFrom && place < stayFrom + stays)
                    && !day.promised[stops[place]];
            if (goes) {
                out[outCount++] = stops[place];
            } else {
                rest[remain++] = stops[place];
            }
        }
        tours.set(turn, rest, remain);
    }

    /** Puts back what is out, each where it costs least; what fits nowhere stays out. */
    private void putBack(int blink) {
        inSomeOrder.sort(out, outCount, chance);
        int still = 0;
        for (int number = 0; number < outCount; number++) {
            int stop = out[number];
            int turn = tours.find(stop, blink, chance);
            if (turn == Tours.NOWHERE) {
                out[still++] = stop;
            } else {
                keep(turn);
                tours.place(stop);
            }
        }
        outCount = still;
    }

    private void undo() {
        for (int number = 0; number < touchedCount; number++) {
            int turn = touched[number];
            tours.set(turn, kept[turn], keptLength[turn]);
        }
    }

    private void keep(int turn) {
        if (keptIn[turn] != round) {
            keptIn[turn] = round;
            keptLength[turn] = tours.length[turn];
            System.arraycopy(tours.order[turn], 0, kept[turn], 0, keptLength[turn]);
            touched[touchedCount++] = turn;
        }
    }
}
