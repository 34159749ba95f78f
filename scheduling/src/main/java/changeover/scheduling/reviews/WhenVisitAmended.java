package changeover.scheduling.reviews;

import changeover.scheduling.closeout.VisitAmended;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;

/** Whether a corrected closure waits is known before anybody else hears of the correction. */
@ApplicationScoped
class WhenVisitAmended {

    @Inject
    ReviewHolds holds;

    void hold(@Observes @Priority(10) VisitAmended amended) {
        holds.look(amended);
    }
}
