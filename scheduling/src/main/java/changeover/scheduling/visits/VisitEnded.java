package changeover.scheduling.visits;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Visits have ended: their days are free again. */
public record VisitEnded(List<Ended> ended) {

    public VisitEnded {
        ended = List.copyOf(ended);
    }

    /** One visit that ended. */
    public record Ended(
            UUID visitId,
            UUID homeId,
            @Nullable UUID agreementId,
            VisitEnd how,
            LocalDate day,
            @Nullable String why) {}
}
