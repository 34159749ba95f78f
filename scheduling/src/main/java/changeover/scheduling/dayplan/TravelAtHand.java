package changeover.scheduling.dayplan;

import changeover.scheduling.dayplan.routes.AsTheCrowFlies;
import changeover.scheduling.dayplan.routes.Travel;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;

/** How roads are reckoned here: by a table where one is installed, else as the crow flies. */
@ApplicationScoped
public class TravelAtHand {

    @Inject
    Instance<Travel> installed;

    /** By a table where one is installed and knows these roads. */
    public Travel travel() {
        return installed.isResolvable() ? installed.get() : AsTheCrowFlies.USUAL;
    }
}
