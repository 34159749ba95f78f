package changeover.scheduling.dayplan;

import changeover.contracts.calendar.Window;
import changeover.contracts.words.Wording;
import changeover.scheduling.visits.VisitKind;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A visit that waits, as a line of a list.
 *
 * @param home the address in one line
 * @param customer who signs for the home; null when nobody does
 * @param plan the plan's name as it was sold; null without a plan
 * @param minutes planned minutes on site
 * @param day the day it has; null while it has none
 * @param technician whose day that is; null while it has none
 */
public record DueVisit(
        UUID visitId,
        UUID homeId,
        String home,
        @Nullable String customer,
        @Nullable String phone,
        VisitKind kind,
        @Nullable Wording plan,
        Window window,
        int minutes,
        int tasks,
        @Nullable LocalDate day,
        @Nullable String technician) {}
