package changeover.scheduling.closeout;

import changeover.contracts.tenants.OwnedWithGivenId;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A photo taken at a visit, known by the SHA-256 of what the device holds; the bytes may come later. */
@Entity
@Table(name = "photo")
public class Photo extends OwnedWithGivenId {

    @Column(name = "visit_id")
    private UUID visitId = new UUID(0, 0);

    private String sha256 = "";

    @Column(name = "finding_id")
    private @Nullable UUID findingId;

    @Column(name = "visit_task_id")
    private @Nullable UUID visitTaskId;

    private @Nullable String caption;

    /** For Hibernate. */
    protected Photo() {}

    private Photo(UUID id) {
        super(id);
    }

    static Photo of(UUID id, UUID visitId, Operation.Photographed photographed, @Nullable UUID finding) {
        var row = new Photo(id);
        row.visitId = visitId;
        row.sha256 = photographed.sha256();
        row.findingId = finding;
        row.visitTaskId = photographed.task();
        row.caption = photographed.caption();
        return row;
    }

    public UUID visitId() {
        return visitId;
    }

    public String sha256() {
        return sha256;
    }

    public Optional<UUID> findingId() {
        return Optional.ofNullable(findingId);
    }

    public Optional<UUID> visitTaskId() {
        return Optional.ofNullable(visitTaskId);
    }

    public Optional<String> caption() {
        return Optional.ofNullable(caption);
    }
}
