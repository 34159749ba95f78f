package changeover.web.field;

import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Today;
import changeover.scheduling.calls.OnCalls;
import changeover.web.session.OwnVisits;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.NotFoundException;

/** A technician takes calls while on call, and finds homes for no other reason; the owner and the office always may. */
@ApplicationScoped
class TakesCalls {

    @Inject
    OwnVisits visits;

    @Inject
    OnCalls onCalls;

    @Inject
    CurrentTenant current;

    @Inject
    Today today;

    /** Whether the telephone of whoever looks rings now. */
    boolean rings() {
        return onCalls.rings(current.person(), today.time());
    }

    /** Not found where they may not. */
    void must() {
        if (visits.onlyOwn() && !rings()) {
            throw new NotFoundException();
        }
    }
}
