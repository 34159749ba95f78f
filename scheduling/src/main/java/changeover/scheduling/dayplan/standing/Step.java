package changeover.scheduling.dayplan.standing;

import changeover.scheduling.dayplan.Moving;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * One thing that happened to a visit's hour.
 *
 * @param by who did it or wrote it down, by name; null where nobody with a name did
 * @param was the hour it had before; null where none
 * @param now the hour it got, or that was told, or the day on which it ended; null where it has none any more
 * @param askedBy who asked for a move; null where nobody said
 */
public record Step(
        UUID visit,
        Kind kind,
        Instant at,
        @Nullable String by,
        @Nullable Hour was,
        @Nullable Hour now,
        Moving.@Nullable By askedBy,
        @Nullable String why) {

    /** What happened. */
    public enum Kind {
        GIVEN,
        TOLD,
        MOVED,
        UNDER_WAY,
        CLOSED,
        CANCELLED,
        NO_ACCESS,
        NOT_KEPT;

        static Kind ofCode(String code) {
            return valueOf(code.toUpperCase(Locale.ROOT));
        }
    }

    /**
     * @param starts null where only the day counts
     * @param technician by name; null where it does not count
     */
    public record Hour(
            LocalDate day,
            @Nullable LocalTime starts,
            @Nullable String technician) {}
}
