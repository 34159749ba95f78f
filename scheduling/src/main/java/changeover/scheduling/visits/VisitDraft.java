package changeover.scheduling.visits;

import changeover.contracts.calendar.Window;
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
    private final List<Owed> tasks = new ArrayList<>();
    private LocalDate from;
    private LocalDate until;

    /** @param frame days the visit may be on before any promise narrows it */
    private VisitDraft(@Nullable Pin pin, Window frame) {
        this.pin = pin;
        this.frame = frame;
        this.from = frame.from();
        this.until = frame.until();
    }

    static VisitDraft pinned(Pin pin) {
        return new VisitDraft(pin, Window.ofDay(pin.day()));
    }

    static VisitDraft in(Window frame) {
        return new VisitDraft(null, frame);
    }

    boolean isPinned() {
        return pin != null;
    }

    List<Owed> tasks() {
        return tasks;
    }

    Window window() {
        return new Window(from, until);
    }

    void add(Owed task) {
        tasks.add(task);
        narrow(task.window());
    }

    void remove(Owed task) {
        tasks.removeIf(held -> held.place() == task.place());
        if (!task.window().from().isBefore(from) || !task.window().until().isAfter(until)) {
            from = frame.from();
            until = frame.until();
            tasks.forEach(held -> narrow(held.window()));
        }
    }

    /** Whether it can take the promise and still has a day. */
    boolean canTake(Owed task) {
        return (pin == null || pin.takesMore())
                && from.isBefore(task.window().until())
                && task.window().from().isBefore(until);
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
        VisitDraft kept = new VisitDraft(pin, common.orElse(frame));
        tasks.forEach(kept::add);
        return kept;
    }

    PlannedVisit planned() {
        tasks.sort(Comparator.comparingInt(Owed::place));
        return new PlannedVisit(
                pin == null ? null : pin.visitId(),
                window(),
                tasks.stream().map(Owed::promise).toList());
    }

    private void narrow(Window window) {
        from = window.from().isAfter(from) ? window.from() : from;
        until = window.until().isBefore(until) ? window.until() : until;
    }
}
