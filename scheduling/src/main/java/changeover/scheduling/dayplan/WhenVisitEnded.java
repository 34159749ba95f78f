package changeover.scheduling.dayplan;

import changeover.scheduling.visits.VisitEnd;
import changeover.scheduling.visits.VisitEnded;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.util.List;
import java.util.UUID;

/** A visit that will not be, or was not, gives its hours back; one that was made keeps its place in the day. */
@ApplicationScoped
class WhenVisitEnded {

    @Inject
    Appointments appointments;

    void free(@Observes VisitEnded event) {
        List<UUID> freed = event.ended().stream()
                .filter(ended -> ended.how() == VisitEnd.CANCELLED || ended.how() == VisitEnd.NOT_KEPT)
                .map(VisitEnded.Ended::visitId)
                .toList();
        if (!freed.isEmpty()) {
            appointments.takeOffAll(freed);
        }
    }
}
