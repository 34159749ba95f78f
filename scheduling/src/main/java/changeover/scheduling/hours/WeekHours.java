package changeover.scheduling.hours;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What somebody worked in a week: each day from the first arrival to the last leaving, as their visits say, unless they
 * corrected it. A signature stands for the minutes that it was given for, and for no others.
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
     * A day.
     *
     * @param onSite minutes at homes
     * @param from first arrival; null where none was told
     * @param until last leaving; null where none was told
     */
    public record Day(
            LocalDate day,
            int visits,
            int onSite,
            @Nullable LocalTime from,
            @Nullable LocalTime until,
            @Nullable Correction correction) {

        /** As the visits say: never less than the minutes at homes. */
        public int byVisits() {
            boolean known = from != null && until != null && from.isBefore(until);
            int span = known ? Math.toIntExact(Duration.between(from, until).toMinutes()) : 0;
            return Math.max(span, onSite);
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
