package changeover.scheduling.dayplan;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A visit that goes with a season.
 *
 * @param last the last day of its window
 * @param state unplaced, placed, closed, cancelled, no_access or not_kept
 * @param why why it was not kept or let fall, where somebody said so
 */
public record SeasonVisit(
        UUID visit,
        UUID home,
        String address,
        String kind,
        LocalDate first,
        LocalDate last,
        int minutes,
        String state,
        @Nullable LocalDate day,
        @Nullable LocalTime starts,
        @Nullable UUID technician,
        @Nullable String technicianName,
        @Nullable String why) {}
