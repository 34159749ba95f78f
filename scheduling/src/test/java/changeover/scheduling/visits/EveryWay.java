package changeover.scheduling.visits;

import java.util.ArrayList;
import java.util.List;

/**
 * Puts each promise in turn to every visit that can take it, to a new one, or to none, and remembers the best end. It
 * shares nothing with the product but the promises.
 */
final class EveryWay {

    /** A visit: the days it may still be on, a bit each. */
    private static final class Going {
        int days;
        long minutes;
        int tasks;

        Going(int days) {
            this.days = days;
        }
    }

    private final List<Promise> promises;
    private final List<Going> visits = new ArrayList<>();
    private final int pins;
    private final int atMost;
    private final long longest;
    private int kept = -1;
    private int made;

    private EveryWay(List<Promise> promises, List<Pin> pins, int atMost, long longest) {
        this.promises = promises;
        this.atMost = atMost;
        this.longest = longest;
        for (Pin pin : pins) {
            if (pin.takesMore()) {
                Going visit = new Going(1 << pin.day().toEpochDay() - SmallYears.FIRST.toEpochDay());
                visit.tasks = pin.holds().size();
                visit.minutes = pin.holds().stream().mapToInt(Promise::minutes).sum();
                visits.add(visit);
            }
        }
        this.pins = visits.size();
    }

    /** The most that so many new visits keep, and the fewest of them that keep as much. */
    record Best(int kept, int made) {}

    static Best of(List<Promise> promises, List<Pin> pins, int atMost, long longest) {
        var every = new EveryWay(promises, pins, atMost, longest);
        every.from(0, 0);
        return new Best(every.kept, every.made);
    }

    private void from(int at, int soFar) {
        int new_ = visits.size() - pins;
        int possible = soFar + promises.size() - at;
        if (possible < kept || possible == kept && new_ >= made) {
            return;
        }
        if (at == promises.size()) {
            kept = soFar;
            made = new_;
            return;
        }
        Promise promise = promises.get(at);
        int days = 0;
        for (int day = 0; day < SmallYears.HORIZON; day++) {
            days |= promise.window().contains(SmallYears.FIRST.plusDays(day)) ? 1 << day : 0;
        }
        for (int index = 0; index < visits.size(); index++) {
            Going visit = visits.get(index);
            boolean fits = visit.tasks == 0 || visit.minutes + promise.minutes() <= longest;
            if ((visit.days & days) != 0 && fits) {
                int before = visit.days;
                visit.days &= days;
                visit.minutes += promise.minutes();
                visit.tasks++;
                from(at + 1, soFar + 1);
                visit.days = before;
                visit.minutes -= promise.minutes();
                visit.tasks--;
            }
        }
        if (new_ < atMost) {
            Going visit = new Going(days);
            visit.minutes = promise.minutes();
            visit.tasks = 1;
            visits.add(visit);
            from(at + 1, soFar + 1);
            visits.removeLast();
        }
        from(at + 1, soFar);
    }
}
