package changeover.scheduling.dayplan;

import changeover.contracts.tenants.Owned;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.LocalTime;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What a task asks in every home, as the business wrote it: two people, an hour of the day, and why. */
@Entity
@Table(name = "task_need")
public class TaskNeed extends Owned {

    @Column(name = "task_code", updatable = false)
    private String taskCode = "";

    private int people = 1;
    private @Nullable LocalTime earliest;
    private @Nullable LocalTime latest;
    private String why = "";

    @Version
    private int version;

    static TaskNeed of(String taskCode) {
        var need = new TaskNeed();
        need.taskCode = taskCode;
        return need;
    }

    void rewrite(Need need, String newWhy) {
        people = need.people();
        earliest = need.earliest();
        latest = need.latest();
        why = newWhy;
    }

    public String taskCode() {
        return taskCode;
    }

    public Need need() {
        return new Need(people, Set.of(), earliest, latest);
    }

    public String why() {
        return why;
    }
}
