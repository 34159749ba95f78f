package changeover.contracts.catalogue;

import changeover.contracts.words.Checks;
import changeover.contracts.words.FilledOn;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import java.util.UUID;

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

    public UUID add(Task task) {
        check(task);
        return bodies.add(TABLE, task.code(), task);
    }

    /** False when there is none of that id and code here. Refused when somebody else changed it meanwhile. */
    public boolean rewrite(UUID id, Task task, FilledOn form) {
        check(task);
        return bodies.rewrite(TABLE, id, task.code(), task, form);
    }

    private void check(Task task) {
        Catalogue known = catalogue.catalogue();
        var checks = new Checks();
        checks.refuseIf(!isCode(task.code()), "code", "code.shape");
        checks.line("wordingEn", task.wording().en());
        checks.line("wordingFr", task.wording().fr());
        checks.refuseIf(
                task.kinds().isEmpty()
                        || task.kinds().stream()
                                .anyMatch(kind -> known.findKind(kind).isEmpty()),
                "kinds",
                "own-task.kind-unknown");
        checks.refuseIf(task.minutes() > 600, "minutes", "own-task.minutes");
        checks.refuseIf(
                task.caution() != null && known.findCaution(task.caution()).isEmpty(),
                "caution",
                "own-task.caution-unknown");
        checks.line("basis", task.basis());
        checks.orRefuse();
    }
}
