package changeover.contracts.tenants;

import io.quarkus.arc.Arc;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.UUID;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;

/** Which business, and which person, this piece of work is for. One transaction, one business. */
@ApplicationScoped
public class CurrentTenant {

    /** The person of work that nobody asked for: the daily timer, the outbox, an import from the command line. */
    public static final UUID NOBODY = new UUID(0, 0);

    @Inject
    TenantInForce inForce;

    @Inject
    AtTheCounter counter;

    /** Sets the business for the request that has just come through the door. */
    public void enter(UUID tenant, UUID person) {
        if (QuarkusTransaction.isActive() && inForce.isSet() && !tenant.equals(inForce.tenant())) {
            throw new IllegalStateException("a transaction of another business is open");
        }
        inForce.set(tenant, person);
        counter.came();
    }

    /**
     * Does the work for one business, in one transaction: joins when the same business's transaction is open.
     *
     * @throws IllegalStateException inside another business's transaction
     */
    public <T extends @Nullable Object> T run(UUID tenant, UUID person, Callable<T> work) {
        var context = Arc.container().requestContext();
        if (context.isActive()) {
            return runInside(tenant, person, work);
        }
        context.activate();
        try {
            return runInside(tenant, person, work);
        } finally {
            context.terminate();
        }
    }

    /** As {@link #run(UUID, UUID, Callable)}, for work that answers nothing. */
    public void run(UUID tenant, UUID person, Runnable work) {
        run(tenant, person, () -> {
            work.run();
            return true;
        });
    }

    private <T extends @Nullable Object> T runInside(UUID tenant, UUID person, Callable<T> work) {
        boolean open = QuarkusTransaction.isActive();
        if (open && inForce.isSet()) {
            if (!tenant.equals(inForce.tenant())) {
                throw new IllegalStateException("a transaction of another business is open");
            }
            return QuarkusTransaction.joiningExisting().call(work);
        }
        UUID tenantBefore = inForce.isSet() ? inForce.tenant() : null;
        UUID personBefore = inForce.isSet() ? inForce.person() : null;
        inForce.set(tenant, person);
        try {
            return QuarkusTransaction.requiringNew().call(work);
        } finally {
            if (tenantBefore == null || personBefore == null) {
                inForce.clear();
            } else {
                inForce.set(tenantBefore, personBefore);
            }
        }
    }

    public boolean isSet() {
        return inForce.isSet();
    }

    /** @throws IllegalStateException when no business is set */
    public UUID id() {
        return inForce.tenant();
    }

    /** @throws IllegalStateException when no business is set */
    public UUID person() {
        return inForce.person();
    }
}
