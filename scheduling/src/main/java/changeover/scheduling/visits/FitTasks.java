package changeover.scheduling.visits;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A task that may be done at several visits goes where it costs the calendar least: to the visit it narrows least, where
 * the technician is at that machine anyway, the earlier one. No visit is emptied, and one that nothing asks for is left
 * free to look the equipment over.
 */
final class FitTasks {

    /** @param days how long the task's window is */
    private record Held(Owed task, VisitDraft at, long days) {}

    private FitTasks() {}

    /** Moves tasks between the visits; each visit keeps a day and the tasks keep their windows. */
    static void settle(List<VisitDraft> drafts) {
        drafts.sort(Comparator.comparing(VisitDraft::window));
        for (Held held : longestFirst(drafts)) {
            if (held.at.tasks().size() > 1 && couldBeElsewhere(held, drafts)) {
                held.at.remove(held.task);
                best(held, drafts).add(held.task);
            }
        }
    }

    private static List<Held> longestFirst(List<VisitDraft> drafts) {
        List<Held> all = new ArrayList<>();
        for (VisitDraft draft : drafts) {
            if (!draft.isPinned()) {
                draft.tasks()
                        .forEach(task ->
                                all.add(new Held(task, draft, task.window().days())));
            }
        }
        all.sort((one, other) -> one.days == other.days
                ? Integer.compare(one.task.rank(), other.task.rank())
                : Long.compare(other.days, one.days));
        return all;
    }

    private static boolean couldBeElsewhere(Held held, List<VisitDraft> drafts) {
        for (VisitDraft draft : drafts) {
            if (draft != held.at && draft.canTake(held.task)) {
                return true;
            }
        }
        return false;
    }

    private static VisitDraft best(Held held, List<VisitDraft> drafts) {
        return drafts.stream()
                .filter(draft -> draft.canTake(held.task))
                .min(Comparator.comparingLong((VisitDraft draft) -> draft.narrowedBy(held.task))
                        .thenComparing(
                                draft -> !draft.worksOn(held.task.promise().equipmentId())))
                .orElse(held.at);
    }
}
