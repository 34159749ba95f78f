package changeover.scheduling.visits;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.util.List;
import java.util.UUID;

/** What was to be read at a visit that was never made is read at the next one. */
@ApplicationScoped
class WhenVisitEnded {

    @Inject
    FirstReadings readings;

    void readNextTime(@Observes VisitEnded event) {
        List<UUID> homes = event.ended().stream()
                .filter(one -> one.how() != VisitEnd.CLOSED)
                .map(VisitEnded.Ended::homeId)
                .distinct()
                .toList();
        if (!homes.isEmpty()) {
            readings.putOn(homes);
        }
    }
}
