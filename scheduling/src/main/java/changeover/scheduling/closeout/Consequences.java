package changeover.scheduling.closeout;

import changeover.scheduling.closeout.Operation.Found;
import changeover.scheduling.closeout.Operation.PartTaken;
import changeover.scheduling.closeout.Operation.TaskAnswered;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What follows from a closed sheet: parts that left their place, tasks that were done, and what is to come next. A deferred
 * task asks for another visit; a finding asks for what was offered, or keeps the customer's no.
 *
 * @param parts by operation
 * @param done tasks of the visit
 */
record Consequences(Map<UUID, PartTaken> parts, Set<UUID> done, Set<Next> next) {

    /** @param kind visit, estimate or refused */
    record Next(
            String kind, @Nullable UUID finding, @Nullable UUID task) {}

    static final Consequences NONE = new Consequences(Map.of(), Set.of(), Set.of());

    static Consequences of(Sheet sheet) {
        Map<UUID, PartTaken> parts = new LinkedHashMap<>();
        Set<UUID> done = new LinkedHashSet<>();
        Set<Next> next = new LinkedHashSet<>();
        for (Taken taken : sheet.standing().values()) {
            switch (taken.operation()) {
                case PartTaken part -> parts.put(taken.id(), part);
                case TaskAnswered(UUID task, Outcome outcome, var _, var _) -> {
                    switch (outcome) {
                        case DONE -> done.add(task);
                        case DEFERRED -> next.add(new Next("visit", null, task));
                        case NOT_APPLICABLE -> {}
                    }
                }
                case Found found -> {
                    if (Boolean.FALSE.equals(found.agreed())) {
                        next.add(new Next("refused", taken.id(), null));
                    } else if (found.next() != null) {
                        next.add(new Next(found.next(), taken.id(), null));
                    }
                }
                default -> {}
            }
        }
        return new Consequences(parts, done, next);
    }
}
