package changeover.scheduling.visits;

import java.util.Arrays;
import java.util.List;

/**
 * Day after day, task after task: for every set of tasks it keeps the fewest visits that have done it so far, and of as
 * many the one with the emptiest last visit. Fast enough for seventeen tasks, and it shares nothing with the product but
 * the promises: it never asks which tasks make one visit together.
 */
final class TaskByTask {

    private static final int NEVER = Integer.MAX_VALUE;

    /** A visit with its day that holds nothing yet: it takes any one task, however long. */
    private static final int EMPTY = -1;

    /** Of a number that says visits and the minutes of the last of them. */
    private static final int VISIT = 10_000;

    /** The last visit was on a day before. */
    private static final int OVER = VISIT - 1;

    private final List<Promise> promises;
    private final long longest;
    private final int sets;

    private TaskByTask(List<Promise> promises, long longest) {
        this.promises = promises;
        this.longest = longest;
        this.sets = 1 << promises.size();
    }

    /** The most that so many new visits keep beside the pins, and the fewest of them that keep as much. */
    static EveryWay.Best of(List<Promise> promises, List<Pin> pins, int atMost, long longest) {
        return new TaskByTask(promises, longest).best(pins, atMost);
    }

    private EveryWay.Best best(List<Pin> pins, int atMost) {
        int[] done = newVisits(atPins(pins));
        int kept = 0;
        int made = 0;
        for (int set = 0; set < sets; set++) {
            int visits = done[set] / VISIT;
            int tasks = Integer.bitCount(set);
            if (done[set] != NEVER && visits <= atMost && (tasks > kept || tasks == kept && visits < made)) {
                kept = tasks;
                made = visits;
            }
        }
        return new EveryWay.Best(kept, made);
    }

    /** For each set that the pins can do the minutes of the last of them. */
    private int[] atPins(List<Pin> pins) {
        int[] done = new int[sets];
        Arrays.fill(done, NEVER);
        done[0] = 0;
        for (Pin pin : pins) {
            if (pin.takesMore()) {
                int held = pin.holds().isEmpty()
                        ? EMPTY
                        : pin.holds().stream().mapToInt(Promise::minutes).sum();
                for (int set = 0; set < sets; set++) {
                    done[set] = done[set] == NEVER ? NEVER : held;
                }
                int possible = possible(pin.day().toEpochDay());
                for (int set = 0; set < sets; set++) {
                    for (int left = possible & ~set; done[set] != NEVER && left != 0; left &= left - 1) {
                        int minutes = minutes(left);
                        if (done[set] == EMPTY || done[set] + minutes <= longest) {
                            int more = set | left & -left;
                            done[more] = Math.min(done[more], Math.max(0, done[set]) + minutes);
                        }
                    }
                }
            }
        }
        return done;
    }

    private int[] newVisits(int[] atPins) {
        int[] done = new int[sets];
        for (int set = 0; set < sets; set++) {
            done[set] = atPins[set] == NEVER ? NEVER : 0;
        }
        for (int day = 0; day < SmallYears.HORIZON; day++) {
            for (int set = 0; set < sets; set++) {
                done[set] = done[set] == NEVER ? NEVER : done[set] / VISIT * VISIT + OVER;
            }
            int possible = possible(SmallYears.FIRST.toEpochDay() + day);
            for (int set = 0; set < sets; set++) {
                for (int left = possible & ~set; done[set] != NEVER && left != 0; left &= left - 1) {
                    int last = done[set] % VISIT;
                    boolean fits = last != OVER && last + minutes(left) <= longest;
                    int visits = fits ? done[set] : (done[set] / VISIT + 1) * VISIT;
                    int more = set | left & -left;
                    done[more] = Math.min(done[more], visits + minutes(left));
                }
            }
        }
        return done;
    }

    /** The tasks that may be done on a day. */
    private int possible(long day) {
        int possible = 0;
        for (int task = 0; task < promises.size(); task++) {
            boolean within = promises.get(task).window().from().toEpochDay() <= day
                    && day < promises.get(task).window().until().toEpochDay();
            possible |= within ? 1 << task : 0;
        }
        return possible;
    }

    /** Of the first task of a set. */
    private int minutes(int set) {
        return promises.get(Integer.numberOfTrailingZeros(set)).minutes();
    }
}
