package changeover.scheduling.reviews;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A closure that waits, or waited, for a review.
 *
 * @param technician name of who closed it
 * @param day on which it was closed
 * @param version of the closure as it stands
 * @param gravest code of the gravest finding; null where nothing was found
 * @param why by which rule
 * @param answer null while it waits
 */
public record HeldClosure(
        UUID id,
        UUID visitId,
        UUID homeId,
        String home,
        UUID technicianId,
        String technician,
        LocalDate day,
        int version,
        int minutes,
        int minutesPlanned,
        @Nullable String gravest,
        ReviewKind why,
        @Nullable Answer answer) {

    /** @param person name of who looked it over */
    public record Answer(
            String person, LocalDate day, @Nullable String words) {}

    public boolean waits() {
        return answer == null;
    }
}
