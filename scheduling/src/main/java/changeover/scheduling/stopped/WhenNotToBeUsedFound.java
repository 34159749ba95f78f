package changeover.scheduling.stopped;

import changeover.scheduling.closeout.NotToBeUsedFound;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;

/** What a visit found not to be used is stopped as soon as it was said. */
@ApplicationScoped
class WhenNotToBeUsedFound {

    @Inject
    MachineStops stops;

    void stop(@Observes NotToBeUsedFound found) {
        stops.stop(found);
    }
}
