package changeover.scheduling.dayplan;

import changeover.scheduling.dayplan.routes.AsTheCrowFlies;
import changeover.scheduling.dayplan.routes.Travel;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import java.util.List;

/** How roads are reckoned here: by a table where one is installed, else as the crow flies, at the business's own pace. */
@ApplicationScoped
public class TravelAtHand {

    @Inject
    Instance<Travel> installed;

    @Inject
    RoadPaces paces;

    /** By a table where one is installed and knows these roads. */
    public Travel travel() {
        AsTheCrowFlies crow = paces.current();
        return installed.isResolvable() ? installed.get().elseBy(crow) : crow;
    }

    /** Asks outside for what is not known yet; never called inside a transaction. */
    public void prepare(List<Travel.Place> places) {
        if (installed.isResolvable()) {
            installed.get().prepare(places);
        }
    }
}
