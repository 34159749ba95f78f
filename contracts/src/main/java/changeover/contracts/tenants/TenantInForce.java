package changeover.contracts.tenants;

import io.quarkus.arc.Arc;
import jakarta.enterprise.context.RequestScoped;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The business and the person of the request in hand. */
@RequestScoped
class TenantInForce {

    private @Nullable UUID tenant;
    private @Nullable UUID person;

    void set(UUID tenant, UUID person) {
        this.tenant = tenant;
        this.person = person;
    }

    void clear() {
        tenant = null;
        person = null;
    }

    boolean isSet() {
        return tenant != null;
    }

    UUID tenant() {
        if (tenant == null) {
            throw new IllegalStateException("no business is set");
        }
        return tenant;
    }

    UUID person() {
        if (person == null) {
            throw new IllegalStateException("no business is set");
        }
        return person;
    }

    /** The one in force on this thread, or null outside any request: a connection then sees no row at all. */
    static @Nullable TenantInForce here() {
        if (!Arc.container().requestContext().isActive()) {
            return null;
        }
        var found = Arc.container().instance(TenantInForce.class).get();
        return found.isSet() ? found : null;
    }
}
