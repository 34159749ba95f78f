package changeover.scheduling.calls;

import changeover.contracts.tenants.Owned;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;

/** A call was answered: by a visit, by a word of advice or by nothing, and why. */
@Entity
@Immutable
@Table(name = "call_outcome")
public class CallOutcome extends Owned {

    @Column(name = "call_id")
    private UUID callId = new UUID(0, 0);

    private String how = "";
    private String why = "";

    @Column(name = "visit_id")
    private @Nullable UUID visitId;

    private Instant at = Instant.EPOCH;

    static CallOutcome of(UUID callId, Became how, String why, @Nullable UUID visitId, Instant at) {
        var outcome = new CallOutcome();
        outcome.callId = callId;
        outcome.how = how.code();
        outcome.why = why;
        outcome.visitId = visitId;
        outcome.at = at;
        return outcome;
    }

    public UUID callId() {
        return callId;
    }

    public Became how() {
        return Became.ofCode(how);
    }

    public String why() {
        return why;
    }

    public Optional<UUID> visitId() {
        return Optional.ofNullable(visitId);
    }

    public Instant at() {
        return at;
    }
}
