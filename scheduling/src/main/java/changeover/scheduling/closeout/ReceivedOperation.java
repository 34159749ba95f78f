package changeover.scheduling.closeout;

import changeover.contracts.tenants.OwnedWithGivenId;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What a device said about a visit, kept as it was said, with the answer it got. */
@Entity
@Table(name = "operation")
public class ReceivedOperation extends OwnedWithGivenId {

    @Column(name = "visit_id")
    private UUID visitId = new UUID(0, 0);

    private String device = "";

    private long sequence;

    private Instant at = Instant.EPOCH;

    @Column(name = "based_on")
    private @Nullable UUID basedOn;

    private String kind = "";

    private String body = "";

    private String state = "";

    private @Nullable Integer place;

    private String answer = "";

    @Column(name = "amendment_id")
    private @Nullable UUID amendmentId;

    @Column(name = "person_id")
    private UUID personId = new UUID(0, 0);

    @Column(name = "received_at")
    private Instant receivedAt = Instant.EPOCH;

    public UUID visitId() {
        return visitId;
    }

    public String device() {
        return device;
    }

    /** The device's own count. */
    public long sequence() {
        return sequence;
    }

    /** By the device's clock, which may be wrong; nothing is decided by it. */
    public Instant at() {
        return at;
    }

    /** The operation that must have been taken before this one. */
    public Optional<UUID> basedOn() {
        return Optional.ofNullable(basedOn);
    }

    public String kind() {
        return kind;
    }

    /** JSON. */
    public String body() {
        return body;
    }

    /** taken, refused or waiting. */
    public String state() {
        return state;
    }

    /** Its place in the order in which this side took the visit's operations; empty while waiting or when refused. */
    public Optional<Integer> place() {
        return Optional.ofNullable(place);
    }

    /** JSON. */
    public String answer() {
        return answer;
    }

    public Optional<UUID> amendmentId() {
        return Optional.ofNullable(amendmentId);
    }

    public UUID personId() {
        return personId;
    }

    public Instant receivedAt() {
        return receivedAt;
    }
}
