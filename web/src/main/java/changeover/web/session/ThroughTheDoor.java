package changeover.web.session;

import changeover.contracts.tenants.CurrentTenant;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.inject.Inject;
import java.util.UUID;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;

/** Carries what the door decided into the request: from here on the work is for that business. */
class ThroughTheDoor {

    @Inject
    SecurityIdentity identity;

    @Inject
    CurrentTenant current;

    @ServerRequestFilter
    void enter() {
        UUID tenant = identity.getAttribute(AtTheDoor.TENANT);
        UUID person = identity.getAttribute(AtTheDoor.PERSON);
        if (tenant != null && person != null) {
            current.enter(tenant, person);
        }
    }
}
