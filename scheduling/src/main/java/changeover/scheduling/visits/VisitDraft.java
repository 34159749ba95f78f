package changeover.scheduling.visits;

import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.LongestVisit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A visit while the year is being laid out: the days it may be on, and the promises it holds so far. */
final class VisitDraft {

    private final @Nullable Pin pin;
    private final Window frame;
    private final LongestVisit longest;
    private final List<Owed> tasks = new ArrayList<>();
    private LocalDate from;
    private LocalDate until;
    private long minutes;

    /** @param frame days the visit may be on before any promise narrows it */
    private VisitDraft(@Nullable Pin pin, Window frame, LongestVisit longest) {
        this.pin = pin;
        this.frame = frame;
        this.longest = longest;
        this.from = frame.from();
        this.until = frame.until();
    }

    /** With what it holds already, before all that may come to it. */
    static VisitDraft pinned(Pin pin, LongestVisit longest) {
        VisitDraft draft = new VisitDraft(pin, Window.ofDay(pin.day()), longest);
        int place = -pin.holds().size();
        for (Promise held : pin.holds()) {
            draft.add(new Owed(place, place++, held));
        }
        return draft;
    }

    static VisitDraft in(Window frame, LongestVisit longest) {
        return new VisitDraft(null, frame, longest);
    }

    boolean isPinned() {
        return pin != null;
    }

    boolean takesMore() {
        return pin == null || pin.takesMore();
    }

    List<Owed> tasks() {
        return tasks;
    }

    long minutes() {
        return minutes;
    }

    Window window() {
        return new Window(from, until);
    }

    void add(Owed task) {
        tasks.add(task);
        minutes += task.minutes();
        narrow(task.window());
    }

    void remove(Owed task) {
        if (tasks.removeIf(held -> held.place() == task.place())) {
            minutes -= task.minutes();
        }
        if (!task.window().from().isBefore(from) || !task.window().until().isAfter(until)) {
            from = frame.from();
            until = frame.until();
            tasks.forEach(held -> narrow(held.window()));
        }
    }

    /** Whether it can take the promise, still has a day and is not too long. */
    boolean canTake(Owed task) {
        return takesMore()
                && from.isBefore(task.window().until())
                && task.window().from().isBefore(until)
                && longest.holds(tasks.size() + 1, minutes + task.minutes());
    }

    /** The days it would lose by taking the promise. */
    long narrowedBy(Owed task) {
        long before = Math.max(0, task.window().from().toEpochDay() - from.toEpochDay());
        long after = Math.max(0, until.toEpochDay() - task.window().until().toEpochDay());
        return before + after;
    }

    boolean worksOn(UUID equipmentId) {
        return tasks.stream().anyMatch(task -> task.promise().equipmentId().equals(equipmentId));
    }

    /** The same visit with its promises, kept inside a season where it can be. */
    VisitDraft keptIn(Window season) {
        Optional<Window> common = pin == null ? window().common(season) : Optional.empty();
        return filled(common.orElse(frame));
    }

    /** The same visit with its promises, to be filled in another way. */
    VisitDraft copy() {
        return filled(frame);
    }

    private VisitDraft filled(Window within) {
        VisitDraft same = new VisitDraft(pin, within, longest);
        tasks.forEach(same::add);
        return same;
    }

    PlannedVisit planned() {
        tasks.sort(Comparator.comparingInt(Owed::place));
        return new PlannedVisit(
                pin == null ? null : pin.visitId(),
                window(),
                tasks.stream().map(Owed::promise).toList(),
                longest);
    }

    /** A visit that has its day keeps it, whatever it holds. */
    private void narrow(Window window) {
        if (pin == null) {
            from = window.from().isAfter(from) ? window.from() : from;
            until = window.until().isBefore(until) ? window.until() : until;
        }
    }
}
