package changeover.deploy.rule;

import changeover.scheduling.visits.Pin;
import changeover.scheduling.visits.Promise;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/**
 * Visits that have their day, as they were asked: what one holds already is taken out of what is to be planned.
 *
 * @param promises still to be planned; what a visit holds goes out of it
 */
record PinnedAsked(List<Promise> promises, VisitsSaid said) {

    List<Pin> taken(List<Question> parts) {
        List<Pin> pins = new ArrayList<>();
        for (Question part : parts) {
            LocalDate day = part.day("day");
            List<Promise> holds = new ArrayList<>();
            part.parts("tasks").forEach(task -> holds.add(held(task, day)));
            pins.add(new Pin(id(day, pins), day, part.yes("takesMore", true), holds));
        }
        return pins;
    }

    /** The same question gives the same name to the same visit, in whichever order the visits stand. */
    private static UUID id(LocalDate day, List<Pin> before) {
        long sameDay = before.stream().filter(pin -> pin.day().equals(day)).count();
        return UUID.nameUUIDFromBytes((day + " " + sameDay).getBytes(StandardCharsets.UTF_8));
    }

    private Promise held(Question task, LocalDate day) {
        String name = task.text("task");
        UUID machine = said.id(task.text("equipment", name));
        for (Promise promise : promises) {
            if (promise.taskCode().equals(name)
                    && promise.equipmentId().equals(machine)
                    && task.maybeDay("from")
                            .map(promise.window().from()::equals)
                            .orElse(true)) {
                promises.remove(promise);
                return promise;
            }
        }
        throw new IllegalArgumentException("Nothing promised is called " + name
                + ", or a visit holds it already; the visit of " + day + " cannot hold it.");
    }
}
