package changeover.scheduling.reviews;

import changeover.scheduling.closeout.VisitClosed;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;

/** Whether a closure waits is known before anybody else hears of it. */
@ApplicationScoped
class WhenVisitClosed {

    @Inject
    ReviewHolds holds;

    void hold(@Observes @Priority(10) VisitClosed closed) {
        holds.look(closed);
    }
}
