package changeover.contracts.tenants;

import jakarta.persistence.Column;
import jakarta.persistence.Id;
import jakarta.persistence.MappedSuperclass;
import java.util.UUID;
import org.hibernate.annotations.PartitionKey;
import org.hibernate.annotations.TenantId;
import org.jspecify.annotations.Nullable;

/** A row that belongs to one business and whose id was made before it was stored, by a device or by a rule. */
@MappedSuperclass
public class OwnedWithGivenId {

    @Id
    @Column(name = "id", updatable = false)
    private UUID id;

    @TenantId
    @PartitionKey
    @Column(name = "tenant_id", updatable = false)
    private @Nullable String tenantId;

    /** For Hibernate, which fills the fields afterwards. */
    protected OwnedWithGivenId() {
        this(new UUID(0, 0));
    }

    protected OwnedWithGivenId(UUID id) {
        this.id = id;
    }

    public UUID id() {
        return id;
    }
}
