package changeover.scheduling.hours;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What somebody worked in a week: each day from the first arrival to the last leaving, long gaps left out, as their visits say,
 * unless they corrected it. A signature stands for the minutes that it was given for, and for no others.
 */
public record WeekHours(
        UUID person,
        String name,
        LocalDate monday,
        List<Day> days,
        @Nullable Signature signature) {

    /** A day's own word of the one who worked it, instead of what the visits say. */
    public record Correction(int minutes, String why) {}

    public record Signature(Instant at, int minutes) {}

    /**
     * From an arrival to the last leaving before a long gap.
     *
     * @param until by the wall, of the next day where it is earlier than {@code from}
     * @param minutes that passed
     */
    public record Stretch(LocalTime from, LocalTime until, int minutes) {}

    /**
     * A day.
     *
     * @param onSite minutes at homes
     * @param stretches of work that began on it, the first one first; none where no hours were told
     */
    public record Day(
            LocalDate day,
            int visits,
            int onSite,
            List<Stretch> stretches,
            @Nullable Correction correction) {

        public Day {
            stretches = List.copyOf(stretches);
        }

        /** First arrival; null where none was told. */
        public @Nullable LocalTime from() {
            return stretches.isEmpty() ? null : stretches.getFirst().from();
        }

        /** Last leaving; null where none was told. */
        public @Nullable LocalTime until() {
            return stretches.isEmpty() ? null : stretches.getLast().until();
        }

        /** As the visits say: never less than the minutes at homes. */
        public int byVisits() {
            return Math.max(stretches.stream().mapToInt(Stretch::minutes).sum(), onSite);
        }

        public int minutes() {
            return correction == null ? byVisits() : correction.minutes();
        }
    }

    public WeekHours {
        days = List.copyOf(days);
    }

    public int minutes() {
        return days.stream().mapToInt(Day::minutes).sum();
    }

    /** Whether they signed just these minutes. */
    public boolean isSigned() {
        return signature != null && signature.minutes() == minutes();
    }

    /** The Monday of a day's week. */
    public static LocalDate mondayOf(LocalDate day) {
        return day.minusDays(day.getDayOfWeek().getValue() - 1L);
    }
}
