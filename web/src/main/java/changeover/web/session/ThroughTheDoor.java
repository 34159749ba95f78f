package changeover.web.session;

import changeover.contracts.tenants.CurrentTenant;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.inject.Inject;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.container.ContainerRequestContext;
import java.util.UUID;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;

/** Carries what the door decided into the request: from here on the work is for that business. */
class ThroughTheDoor {

    /** Stands in no name of anything, and no database takes it. */
    private static final String NUL = "%00";

    @Inject
    SecurityIdentity identity;

    @Inject
    CurrentTenant current;

    @ServerRequestFilter
    void enter(ContainerRequestContext request) {
        if (request.getUriInfo().getRequestUri().toString().contains(NUL)) {
            throw new NotFoundException();
        }
        UUID tenant = identity.getAttribute(AtTheDoor.TENANT);
        UUID person = identity.getAttribute(AtTheDoor.PERSON);
        if (tenant != null && person != null) {
            current.enter(tenant, person);
        }
    }
}
