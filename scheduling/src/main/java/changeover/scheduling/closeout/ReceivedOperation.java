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

    /** For Hibernate. */
    protected ReceivedOperation() {}

    private ReceivedOperation(UUID id) {
        super(id);
    }

    /** What was said, before it is answered. */
    static ReceivedOperation said(UUID visitId, SentOperation sent, UUID by, Instant now) {
        var operation = new ReceivedOperation(sent.id());
        operation.visitId = visitId;
        operation.device = Storable.line(sent.device(), 80);
        operation.sequence = Math.max(0, sent.sequence());
        operation.at = Storable.instant(sent.at(), now);
        operation.basedOn = sent.basedOn();
        operation.kind = Storable.line(sent.kind(), 40);
        operation.body = Storable.body(sent.body());
        operation.state = OperationAnswer.State.WAITING.code();
        operation.answer = "{}";
        operation.personId = by;
        operation.receivedAt = now;
        return operation;
    }

    /** It stands on the sheet, in this place. */
    void take(int newPlace, @Nullable UUID amendment) {
        state = OperationAnswer.State.TAKEN.code();
        place = newPlace;
        amendmentId = amendment;
    }

    void refuse(String sentences) {
        state = OperationAnswer.State.REFUSED.code();
        answer = sentences;
    }

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
