package changeover.scheduling.visits;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A task that may be done at several visits goes where it costs the calendar least: to the visit it narrows least, where
 * the technician is at that machine anyway, the earlier one. No visit is emptied, and one that nothing asks for is left
 * free to look the equipment over.
 */
final class FitTasks {

    private FitTasks() {}

    /** Moves tasks between the visits; each visit keeps a day and the tasks keep their windows. */
    static void settle(List<VisitDraft> drafts) {
        drafts.sort(Comparator.comparing(VisitDraft::window));
        List<Promise> longestFirst = drafts.stream()
                .filter(draft -> !draft.isPinned())
                .flatMap(draft -> draft.tasks().stream())
                .sorted(Comparator.comparing(
                                (Promise promise) -> promise.window().days())
                        .reversed())
                .toList();
        for (Promise promise : longestFirst) {
            VisitDraft now = drafts.stream()
                    .filter(draft -> draft.tasks().contains(promise))
                    .findFirst()
                    .orElseThrow();
            if (now.tasks().size() > 1) {
                now.tasks().remove(promise);
                better(promise, drafts).orElse(now).add(promise);
            }
        }
    }

    private static Optional<VisitDraft> better(Promise promise, List<VisitDraft> drafts) {
        return drafts.stream()
                .filter(draft -> draft.canTake(promise))
                .min(Comparator.comparing((VisitDraft draft) -> draft.narrowedBy(promise))
                        .thenComparing(draft -> !draft.worksOn(promise.equipmentId(), promise)));
    }
}
