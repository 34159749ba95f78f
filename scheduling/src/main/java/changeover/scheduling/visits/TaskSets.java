package changeover.scheduling.visits;

import changeover.contracts.catalogue.LongestVisit;
import java.util.ArrayList;
import java.util.List;

/** All sets of a few tasks, each a number: the days that a set has in common, and its minutes together. */
final class TaskSets {

    private final List<Owed> tasks;
    private final LongestVisit longest;
    private final long[] opens;
    private final long[] closes;
    private final long[] minutes;

    TaskSets(List<Owed> tasks, LongestVisit longest) {
        this.tasks = tasks;
        this.longest = longest;
        int sets = 1 << tasks.size();
        opens = new long[sets];
        closes = new long[sets];
        minutes = new long[sets];
        opens[0] = Long.MIN_VALUE;
        closes[0] = Long.MAX_VALUE;
        for (int set = 1; set < sets; set++) {
            int rest = set & (set - 1);
            Owed task = tasks.get(Integer.numberOfTrailingZeros(set));
            opens[set] = Math.max(opens[rest], task.window().from().toEpochDay());
            closes[set] = Math.min(closes[rest], task.window().until().toEpochDay());
            minutes[set] = minutes[rest] + task.minutes();
        }
    }

    /** How many sets there are, the empty one and the whole among them. */
    int size() {
        return opens.length;
    }

    /** Whether one new visit does all of a set. */
    boolean isOneVisit(int set) {
        return opens[set] < closes[set] && longest.holds(Integer.bitCount(set), minutes[set]);
    }

    /** The tasks that might be done on one day with one task, that one aside. */
    int meeting(int one) {
        int meeting = 0;
        for (int other = 1; other < size(); other <<= 1) {
            boolean together = opens[one] < closes[other] && opens[other] < closes[one];
            meeting |= together && other != one ? other : 0;
        }
        return meeting;
    }

    /** The tasks that a visit with a day could take, each for itself. */
    int goingTo(VisitDraft pin) {
        int going = 0;
        for (int one = 1; one < size(); one <<= 1) {
            going |= goesTo(pin, one) ? one : 0;
        }
        return going;
    }

    /** Whether a visit that has its day does all of a set beside what it holds. */
    boolean goesTo(VisitDraft pin, int set) {
        long day = pin.window().from().toEpochDay();
        return set == 0
                || pin.takesMore()
                        && opens[set] <= day
                        && day < closes[set]
                        && longest.holds(pin.tasks().size() + Integer.bitCount(set), pin.minutes() + minutes[set]);
    }

    /** The tasks of a set, what closes first at the head. */
    List<Owed> tasks(int set) {
        List<Owed> some = new ArrayList<>();
        for (int left = set; left != 0; left &= left - 1) {
            some.add(tasks.get(Integer.numberOfTrailingZeros(left)));
        }
        return some;
    }
}
