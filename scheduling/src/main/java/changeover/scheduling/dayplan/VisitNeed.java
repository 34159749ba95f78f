package changeover.scheduling.dayplan;

import changeover.contracts.tenants.Owned;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.LocalTime;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What one visit asks, as somebody wrote it by hand, and why. */
@Entity
@Table(name = "visit_need")
public class VisitNeed extends Owned {

    @Column(name = "visit_id", updatable = false)
    private UUID visitId = new UUID(0, 0);

    private int people = 1;
    private @Nullable String ticket;
    private @Nullable LocalTime earliest;
    private @Nullable LocalTime latest;
    private String why = "";

    @Version
    private int version;

    static VisitNeed of(UUID visitId) {
        var need = new VisitNeed();
        need.visitId = visitId;
        return need;
    }

    void rewrite(Need need, String newWhy) {
        people = need.people();
        ticket = need.tickets().stream().findFirst().orElse(null);
        earliest = need.earliest();
        latest = need.latest();
        why = newWhy;
    }

    public Need need() {
        return new Need(people, ticket == null ? Set.of() : Set.of(ticket), earliest, latest);
    }

    public String why() {
        return why;
    }

    public int version() {
        return version;
    }
}
