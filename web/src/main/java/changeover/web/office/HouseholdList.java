package changeover.web.office;

import changeover.scheduling.visits.HouseholdTasks;
import changeover.web.session.Frame;
import java.util.List;
import java.util.UUID;

/** What the household does itself in a year, as the office reads it. */
public record HouseholdList(List<Line> lines) {

    /**
     * A task, as a line.
     *
     * @param words what is done, with the machine it is done to
     * @param due the day it is due, in words
     * @param done the day it was done, in words; empty while it is not
     */
    public record Line(UUID id, String words, String due, String done, String by, boolean late) {}

    static HouseholdList of(List<HouseholdTasks.Listed> tasks, Frame frame) {
        return new HouseholdList(tasks.stream().map(task -> line(task, frame)).toList());
    }

    private static Line line(HouseholdTasks.Listed task, Frame frame) {
        String what = task.wording().in(frame.locale());
        return new Line(
                task.id(),
                task.machine().isEmpty() ? what : task.machine() + ", " + what,
                frame.brief(task.dueOn()),
                task.doneOn() == null ? "" : frame.brief(task.doneOn()),
                task.doneBy(),
                task.doneOn() == null && task.dueOn().isBefore(frame.today()));
    }

    /** What is not written as done yet. */
    public List<Line> open() {
        return lines.stream().filter(line -> line.done().isEmpty()).toList();
    }
}
