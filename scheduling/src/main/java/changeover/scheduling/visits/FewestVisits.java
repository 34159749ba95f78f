package changeover.scheduling.visits;

import changeover.contracts.calendar.Window;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * The fewest days that touch every window: go on the last day of the window that closes first, cross off all it touches,
 * and again; with n windows in the order of n log n. Where only so many days may be used, the days that touch the most
 * windows.
 */
final class FewestVisits {

    private FewestVisits() {}

    /** Visits as long as their work: those that have their day take all they can, since it costs nothing. */
    static Packed packed(Packing asked) {
        NavigableMap<LocalDate, Integer> pinOn = new TreeMap<>();
        List<List<Owed>> toPins = new ArrayList<>();
        for (VisitDraft pin : asked.pins()) {
            if (pin.takesMore()) {
                pinOn.putIfAbsent(pin.window().from(), toPins.size());
            }
            toPins.add(new ArrayList<>());
        }
        List<Owed> open = new ArrayList<>();
        for (Owed task : asked.tasks()) {
            var pin = pinOn.isEmpty() ? null : pinOn.ceilingEntry(task.window().from());
            if (pin != null && pin.getKey().isBefore(task.window().until())) {
                toPins.get(pin.getValue()).add(task);
            } else {
                open.add(task);
            }
        }
        List<LocalDate> days = touchingMost(open.stream().map(Owed::window).toList(), asked.atMost());
        List<List<Owed>> made = new ArrayList<>();
        days.forEach(_ -> made.add(new ArrayList<>()));
        List<Owed> left = new ArrayList<>();
        for (Owed task : open) {
            int at = firstOnOrAfter(task.window().from(), days);
            if (at < days.size() && task.window().contains(days.get(at))) {
                made.get(at).add(task);
            } else {
                left.add(task);
            }
        }
        return new Packed(toPins, made, left, Proof.FEWEST);
    }

    private static int firstOnOrAfter(LocalDate day, List<LocalDate> days) {
        int found = Collections.binarySearch(days, day);
        return found < 0 ? -found - 1 : found;
    }

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

        /** Windows touched on a day that the chosen day before it did not touch; the first row has no day before. */
        private final int[][] gained;

        Choice(List<Window> windows) {
            days = windows.stream().map(Window::last).distinct().sorted().toList();
            gained = new int[days.size() + 1][days.size()];
            for (Window window : windows) {
                int first = firstOnOrAfter(window.from(), days);
                int last = firstOnOrAfter(window.last(), days);
                for (int day = first; day <= last; day++) {
                    gained[first][day]++;
                }
            }
            for (int before = days.size() - 1; before >= 0; before--) {
                for (int day = 0; day < days.size(); day++) {
                    gained[before][day] += gained[before + 1][day];
                }
            }
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
            Collections.sort(chosen);
            return chosen;
        }
    }
}
