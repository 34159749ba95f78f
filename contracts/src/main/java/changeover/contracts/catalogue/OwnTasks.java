package changeover.contracts.catalogue;

import changeover.contracts.words.FilledOn;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The tasks that the current business added, or wrote over those that are shipped. */
@ApplicationScoped
public class OwnTasks {

    private static final String TABLE = "own_task";

    @Inject
    OwnBodies bodies;

    @Inject
    OwnCatalogue catalogue;

    static boolean isCode(String said) {
        return said.matches("[a-z0-9][a-z0-9-]{0,59}");
    }

    public List<OwnRow<Task>> all() {
        return bodies.all(TABLE, Task.class);
    }

    public Optional<OwnRow<Task>> get(UUID id) {
        return bodies.get(TABLE, id, Task.class);
    }

    public UUID add(Task task) {
        check(task);
        return bodies.add(TABLE, task.code(), task);
    }

    /** False when there is none of that id and code here. Refused when somebody else changed it meanwhile. */
    public boolean rewrite(UUID id, Task task, FilledOn form) {
        check(task);
        return bodies.rewrite(TABLE, id, task.code(), task, form);
    }

    /** From a day on no new promise names this task; null offers it again. False when there is none of that id here. */
    public boolean withdraw(UUID id, @Nullable LocalDate day) {
        return bodies.withdraw(TABLE, id, day);
    }

    private void check(Task task) {
        OwnCatalogue.Own own = catalogue.read();
        List<Refusal> wrong = TaskRules.of(task, own.catalogue(), own.seasons().climate());
        if (!wrong.isEmpty()) {
            throw new Refused(wrong);
        }
    }
}
