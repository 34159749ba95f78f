package changeover.scheduling.visits;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;

/**
 * New visits that no plan can do without: what must be done inside a stretch of days needs as many visits there as its
 * minutes fill, and one for each task longer than half a visit; stretches that do not meet add up. Visits that have their
 * day give their free minutes to the stretch they are in.
 */
final class VisitsAtLeast {

    private static final Comparator<Owed> LATEST_FIRST =
            Comparator.comparing((Owed task) -> task.window().from()).reversed();

    private final Packing asked;
    private final List<VisitDraft> pins;

    /** By the day after a stretch's last: visits needed before that day. */
    private final TreeMap<LocalDate, Long> before = new TreeMap<>();

    private VisitsAtLeast(Packing asked) {
        this.asked = asked;
        this.pins = asked.pins().stream()
                .filter(VisitDraft::takesMore)
                .sorted(Comparator.comparing((VisitDraft pin) -> pin.window().from())
                        .reversed())
                .toList();
    }

    static long of(Packing asked) {
        return asked.tasks().isEmpty() ? 0 : new VisitsAtLeast(asked).counted();
    }

    private long counted() {
        List<Owed> closed = new ArrayList<>();
        LocalDate until = asked.tasks().getFirst().window().until();
        for (Owed task : asked.tasks()) {
            if (!task.window().until().equals(until)) {
                before.put(until, before(closed, until));
                until = task.window().until();
            }
            closed.add(task);
        }
        return before(closed, until);
    }

    private long before(List<Owed> closed, LocalDate until) {
        long most = before.isEmpty() ? 0 : before.lastEntry().getValue();
        var stretch = new Stretch(until);
        List<Owed> latest = closed.stream().sorted(LATEST_FIRST).toList();
        for (int at = 0; at < latest.size(); at++) {
            LocalDate from = latest.get(at).window().from();
            stretch.add(latest.get(at));
            if (at + 1 == latest.size() || !latest.get(at + 1).window().from().equals(from)) {
                var earlier = before.floorEntry(from);
                most = Math.max(most, stretch.needsFrom(from) + (earlier == null ? 0 : earlier.getValue()));
            }
        }
        return most;
    }

    /** What must be done between a day and the end of the stretch, the day going back. */
    private final class Stretch {
        private final LocalDate until;
        private final long each = asked.longest().minutes();
        private long minutes;
        private long aboveHalf;
        private long free;
        private int pinsIn;
        private int pinsSeen;

        Stretch(LocalDate until) {
            this.until = until;
        }

        void add(Owed task) {
            long taken = Math.min(task.minutes(), each);
            minutes += taken;
            aboveHalf += 2 * taken > each ? 1 : 0;
        }

        long needsFrom(LocalDate from) {
            while (pinsSeen < pins.size() && !pins.get(pinsSeen).window().from().isBefore(from)) {
                VisitDraft pin = pins.get(pinsSeen++);
                if (pin.window().from().isBefore(until)) {
                    pinsIn++;
                    free += Math.max(0, each - pin.minutes());
                }
            }
            long left = Math.max(0, minutes - free);
            long filled = left / each + (left % each == 0 ? 0 : 1);
            return Math.max(pinsIn == 0 ? 1 : 0, Math.max(filled, aboveHalf - pinsIn));
        }
    }
}
