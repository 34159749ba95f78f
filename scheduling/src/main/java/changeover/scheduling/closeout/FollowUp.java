package changeover.scheduling.closeout;

import changeover.contracts.tenants.Owned;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What a visit leaves to be done: another visit, an estimate to make, or the customer's recorded no. */
@Entity
@Table(name = "follow_up")
public class FollowUp extends Owned {

    /** Ends a follow-up whose cause was amended away. */
    static final String AMENDED = "amended";

    @Column(name = "visit_id")
    private UUID visitId = new UUID(0, 0);

    @Column(name = "home_id")
    private UUID homeId = new UUID(0, 0);

    private String kind = "";

    @Column(name = "finding_id")
    private @Nullable UUID findingId;

    @Column(name = "visit_task_id")
    private @Nullable UUID visitTaskId;

    @Column(name = "opened_on")
    private LocalDate openedOn = LocalDate.EPOCH;

    @Column(name = "ended_on")
    private @Nullable LocalDate endedOn;

    @Column(name = "ended_why")
    private @Nullable String endedWhy;

    @Column(name = "became_id")
    private @Nullable UUID becameId;

    static FollowUp open(VisitAtHand visit, Consequences.Next next, LocalDate day) {
        var row = new FollowUp();
        row.visitId = visit.id();
        row.homeId = visit.homeId();
        row.kind = next.kind();
        row.findingId = next.finding();
        row.visitTaskId = next.task();
        row.openedOn = day;
        return row;
    }

    Consequences.Next next() {
        return new Consequences.Next(kind, findingId, visitTaskId);
    }

    /** An amendment takes away what it followed from, or brings it back; what has ended otherwise stays as it is. */
    void agree(boolean wanted, LocalDate day) {
        if (!wanted && endedOn == null) {
            end(day, AMENDED, null);
        } else if (wanted && AMENDED.equals(endedWhy)) {
            endedOn = null;
            endedWhy = null;
        }
    }

    /** It became a visit or an estimate, or nothing, for a reason. */
    void end(LocalDate day, String why, @Nullable UUID became) {
        endedOn = day;
        endedWhy = why;
        becameId = became;
    }

    public UUID visitId() {
        return visitId;
    }

    public UUID homeId() {
        return homeId;
    }

    /** visit, estimate or refused. */
    public String kind() {
        return kind;
    }

    public Optional<UUID> findingId() {
        return Optional.ofNullable(findingId);
    }

    public Optional<UUID> visitTaskId() {
        return Optional.ofNullable(visitTaskId);
    }

    public LocalDate openedOn() {
        return openedOn;
    }

    public Optional<LocalDate> endedOn() {
        return Optional.ofNullable(endedOn);
    }

    public Optional<String> endedWhy() {
        return Optional.ofNullable(endedWhy);
    }

    /** The visit or estimate it became. */
    public Optional<UUID> becameId() {
        return Optional.ofNullable(becameId);
    }
}
