package changeover.web.api;

import changeover.scheduling.dayplan.Appointment;
import changeover.scheduling.dayplan.Moving;
import changeover.scheduling.dayplan.standing.HourState;
import changeover.scheduling.dayplan.standing.Step;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * How a visit's hour stands, and what became of those it had.
 *
 * @param state without_day, proposed, confirmed (the customer was told it), under_way, done, cancelled, no_access, not_kept
 * @param technician with the day and the hours null while it has none
 * @param second who goes along; null where nobody does
 * @param steps first to last
 */
public record HourDocument(
        UUID visit,
        String state,
        @Nullable UUID technician,
        @Nullable LocalDate day,
        @Nullable LocalTime starts,
        @Nullable LocalTime ends,
        @Nullable UUID second,
        List<StepDocument> steps) {

    /**
     * @param what given, told, moved, under_way, closed, cancelled, no_access or not_kept
     * @param by who did it or wrote it down, by name
     * @param was the hour before; null where there was none
     * @param now the hour that it got or that was told; null where it has none any more
     * @param askedBy customer or us; null where nobody said
     */
    public record StepDocument(
            String what,
            Instant at,
            @Nullable String by,
            Step.@Nullable Hour was,
            Step.@Nullable Hour now,
            @Nullable String askedBy,
            @Nullable String why) {

        static StepDocument of(Step step) {
            return new StepDocument(
                    step.kind().name().toLowerCase(Locale.ROOT),
                    step.at(),
                    step.by(),
                    step.was(),
                    step.now(),
                    Optional.ofNullable(step.askedBy()).map(Moving.By::code).orElse(null),
                    step.why());
        }
    }

    static HourDocument of(
            UUID visit, HourState state, Optional<Appointment> given, @Nullable UUID second, List<Step> steps) {
        return new HourDocument(
                visit,
                state.code(),
                given.map(Appointment::technicianId).orElse(null),
                given.map(Appointment::day).orElse(null),
                given.map(Appointment::starts).orElse(null),
                given.map(Appointment::ends).orElse(null),
                second,
                steps.stream().map(StepDocument::of).toList());
    }
}
