package changeover.web.session;

import changeover.contracts.tenants.CurrentTenant;
import changeover.scheduling.dayplan.SecondHands;
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
    SecondHands seconds;

    @Inject
    CurrentTenant current;

    @Inject
    SecurityIdentity identity;

    /** The visit, not found when it is somebody else's. */
    public VisitLists.Row found(UUID id) {
        return visits.one(id)
                .filter(row -> !onlyOwn() || current.person().equals(row.technicianId()) || goesAlong(id))
                .orElseThrow(NotFoundException::new);
    }

    private boolean goesAlong(UUID id) {
        return seconds.of(id)
                .filter(second -> current.person().equals(second.technicianId()))
                .isPresent();
    }

    public boolean onlyOwn() {
        return identity.hasRole("technician");
    }
}
