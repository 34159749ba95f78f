package changeover.scheduling.visits;

import changeover.contracts.calendar.Window;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The fewest days that touch every window: go on the last day of the window that closes first, cross off all it touches,
 * and again. Where only so many days may be used, the days that touch the most windows.
 */
final class FewestVisits {

    private FewestVisits() {}

    /** Days in order; each is the last day of some window. */
    static List<LocalDate> touchingAll(List<Window> windows) {
        List<LocalDate> days = new ArrayList<>();
        for (Window window : windows.stream().sorted().toList()) {
            if (days.isEmpty() || !window.contains(days.getLast())) {
                days.add(window.last());
            }
        }
        return days;
    }

    /** At most so many days, chosen so that no other choice touches more windows; of equals, the earlier. */
    static List<LocalDate> touchingMost(List<Window> windows, int atMost) {
        List<LocalDate> all = touchingAll(windows);
        return all.size() <= atMost ? all : new Choice(windows).days(atMost);
    }

    /** The best last day for a number of days, built up one day at a time. */
    private static final class Choice {

        private final List<LocalDate> days;
        private final int[][] gained;

        Choice(List<Window> windows) {
            days = windows.stream().map(Window::last).distinct().sorted().toList();
            gained = new int[days.size() + 1][days.size()];
            for (int before = -1; before < days.size(); before++) {
                for (int day = before + 1; day < days.size(); day++) {
                    gained[before + 1][day] = touchedFirst(windows, before, day);
                }
            }
        }

        /** Windows touched on a day that the chosen day before it did not touch. */
        private int touchedFirst(List<Window> windows, int before, int day) {
            return (int) windows.stream()
                    .filter(window -> window.contains(days.get(day)))
                    .filter(window -> before < 0 || !window.contains(days.get(before)))
                    .count();
        }

        List<LocalDate> days(int atMost) {
            int count = Math.min(atMost, days.size());
            int[][] best = new int[count + 1][days.size()];
            int[][] previous = new int[count + 1][days.size()];
            for (int used = 1; used <= count; used++) {
                for (int day = 0; day < days.size(); day++) {
                    best[used][day] = gained[0][day];
                    previous[used][day] = -1;
                    for (int before = 0; used > 1 && before < day; before++) {
                        int touched = best[used - 1][before] + gained[before + 1][day];
                        if (touched > best[used][day]) {
                            best[used][day] = touched;
                            previous[used][day] = before;
                        }
                    }
                }
            }
            return count == 0 ? List.of() : traced(best[count], previous, count);
        }

        private List<LocalDate> traced(int[] last, int[][] previous, int count) {
            int day = 0;
            for (int other = 1; other < last.length; other++) {
                if (last[other] > last[day]) {
                    day = other;
                }
            }
            List<LocalDate> chosen = new ArrayList<>();
            for (int used = count; day >= 0 && used > 0; used--) {
                chosen.add(days.get(day));
                day = previous[used][day];
            }
            chosen.sort(Comparator.naturalOrder());
            return chosen;
        }
    }
}
