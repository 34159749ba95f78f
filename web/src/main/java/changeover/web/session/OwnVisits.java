package changeover.web.session;

import changeover.contracts.tenants.CurrentTenant;
import changeover.scheduling.visits.VisitLists;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.NotFoundException;
import java.util.UUID;

/** A technician finds their own visits only; to the owner and the office every visit of the business is known. */
@ApplicationScoped
public class OwnVisits {

    @Inject
    VisitLists visits;

    @Inject
    CurrentTenant current;

    @Inject
    SecurityIdentity identity;

    /** The visit, not found when it is somebody else's. */
    public VisitLists.Row found(UUID id) {
        return visits.one(id)
                .filter(row -> !onlyOwn() || current.person().equals(row.technicianId()))
                .orElseThrow(NotFoundException::new);
    }

    public boolean onlyOwn() {
        return identity.hasRole("technician");
    }
}
