package changeover.contracts.tenants;

import jakarta.persistence.Column;
import jakarta.persistence.Id;
import jakarta.persistence.MappedSuperclass;
import java.util.UUID;
import org.hibernate.annotations.PartitionKey;
import org.hibernate.annotations.TenantId;
import org.hibernate.annotations.UuidGenerator;
import org.jspecify.annotations.Nullable;

/**
 * A row that belongs to one business. Updates and deletes name the business too; the database's own key is
 * {@code (tenant_id, id)}. The id is a time-ordered UUID; a row whose id a client chose extends {@link OwnedWithGivenId}.
 */
@MappedSuperclass
public class Owned {

    @Id
    @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
    @Column(name = "id", updatable = false)
    private @Nullable UUID id;

    @TenantId
    @PartitionKey
    @Column(name = "tenant_id", updatable = false)
    private @Nullable String tenantId;

    /** @throws IllegalStateException before the row is stored */
    public UUID id() {
        if (id == null) {
            throw new IllegalStateException("not stored yet");
        }
        return id;
    }
}
