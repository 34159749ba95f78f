package changeover.scheduling.dayplan;

import changeover.scheduling.visits.VisitKind;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What calendars are told of a visit: its hour in the business's own time, or that it will not be.
 *
 * @param sequence from 0, one more for each thing told of the visit
 * @param minutes planned
 * @param certain whether the customer was told this hour
 * @param goesAlong whether the calendar's owner goes along to somebody else's visit
 * @param technician whose visit it is
 */
public record CalendarEntry(
        UUID visitId,
        VisitKind kind,
        int minutes,
        LocalDate day,
        LocalTime starts,
        LocalTime ends,
        boolean cancelled,
        boolean certain,
        boolean goesAlong,
        int sequence,
        Instant changedAt,
        String technician,
        String street,
        @Nullable String unitLabel,
        String city) {}
