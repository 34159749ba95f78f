package changeover.scheduling.closeout;

import changeover.contracts.tenants.OwnedWithGivenId;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;

/** A closed visit was corrected: who, when, why, and what it said before and says now. */
@Entity
@Table(name = "amendment")
public class Amendment extends OwnedWithGivenId {

    @Column(name = "visit_id")
    private UUID visitId = new UUID(0, 0);

    private int version;

    private String why = "";

    @Column(name = "person_id")
    private UUID personId = new UUID(0, 0);

    private Instant at = Instant.EPOCH;

    private String changes = "";

    /** For Hibernate. */
    protected Amendment() {}

    private Amendment(UUID id) {
        super(id);
    }

    static Amendment of(UUID id, UUID visitId, int version, String why, UUID by, Instant now, String changes) {
        var row = new Amendment(id);
        row.visitId = visitId;
        row.version = version;
        row.why = why;
        row.personId = by;
        row.at = now;
        row.changes = changes;
        return row;
    }

    public UUID visitId() {
        return visitId;
    }

    public int version() {
        return version;
    }

    public String why() {
        return why;
    }

    public UUID personId() {
        return personId;
    }

    public Instant at() {
        return at;
    }

    /** JSON: a list of what, old and new. */
    public String changes() {
        return changes;
    }
}
