package changeover.scheduling.visits;

import changeover.contracts.calendar.Window;
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
    private final List<Promise> tasks = new ArrayList<>();

    /** @param frame days the visit may be on before any promise narrows it */
    VisitDraft(@Nullable Pin pin, Window frame) {
        this.pin = pin;
        this.frame = frame;
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

    void add(Promise promise) {
        tasks.add(promise);
    }

    List<Promise> tasks() {
        return tasks;
    }

    Window window() {
        return windowWithout(null);
    }

    /** The days common to its frame and all its promises but one. */
    private Window windowWithout(@Nullable Promise left) {
        Window window = frame;
        for (Promise task : tasks) {
            if (!task.equals(left)) {
                window = window.common(task.window()).orElseThrow();
            }
        }
        return window;
    }

    /** Whether it can take the promise and still has a day. */
    boolean canTake(Promise promise) {
        return (pin == null || pin.takesMore()) && windowWithout(promise).meets(promise.window());
    }

    /** The days it loses by holding the promise. */
    long narrowedBy(Promise promise) {
        Window without = windowWithout(promise);
        return without.days()
                - without.common(promise.window()).map(Window::days).orElse(0L);
    }

    boolean worksOn(UUID equipmentId, Promise butFor) {
        return tasks.stream()
                .anyMatch(task -> !task.equals(butFor) && task.equipmentId().equals(equipmentId));
    }

    /** The same visit with its promises, kept inside a season where it can be. */
    VisitDraft keptIn(Window season) {
        Optional<Window> common = pin == null ? window().common(season) : Optional.empty();
        VisitDraft kept = new VisitDraft(pin, common.orElse(frame));
        kept.tasks.addAll(tasks);
        return kept;
    }

    PlannedVisit planned(List<Promise> order) {
        List<Promise> sorted =
                tasks.stream().sorted(Comparator.comparingInt(order::indexOf)).toList();
        return new PlannedVisit(pin == null ? null : pin.visitId(), window(), sorted);
    }
}
