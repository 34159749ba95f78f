package changeover.web.session;

import changeover.contracts.tenants.CurrentTenant;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.UUID;

/** Who has the form in hand: a form says it, so that it is kept for nobody else when the session ends meanwhile. */
@Named("writer")
@RequestScoped
public class Writer {

    @Inject
    SecurityIdentity identity;

    /** The person's id, or nothing for a customer and for somebody who is not known. */
    public String id() {
        UUID person = identity.getAttribute(AtTheDoor.PERSON);
        return person == null || person.equals(CurrentTenant.NOBODY) ? "" : person.toString();
    }
}
