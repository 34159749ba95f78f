package changeover.web.session;

import changeover.contracts.tenants.Ids;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Named;

/** Every form that is drawn says an id of its own, so that it is done once however often it is sent. */
@Named("sending")
@ApplicationScoped
public class Sending {

    /** Another one each time it is asked for: two drawings of a page are two deeds. */
    public String id() {
        return Ids.next().toString();
    }
}
