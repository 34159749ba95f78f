package changeover.scheduling.deferred;

import changeover.scheduling.closeout.VisitAmended;
import changeover.scheduling.closeout.VisitClosed;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;

/** What was put off looks for its visit at once. */
@ApplicationScoped
class WhenVisitClosed {

    @Inject
    DeferredReadings readings;

    void join(@Observes VisitClosed closed) {
        readings.join(closed.homeId());
    }

    void correct(@Observes VisitAmended amended) {
        readings.takeBack(amended.now().visitId());
        readings.join(amended.now().homeId());
    }
}
