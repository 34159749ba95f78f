package changeover.scheduling.dayplan.season;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * The answer of a season: a day for each visit that can be kept, the others by name with the reason, and what would keep
 * them.
 *
 * @param driving minutes on the road of all the days together
 */
public record SeasonAnswer(
        List<Kept> kept, List<Unkept> unkept, List<MoreDay> moreDays, List<MoreTickets> moreTickets, long driving) {

    /**
     * @param second who goes with them; null where one goes alone
     * @param tried whether the day was given to somebody who is only thought of
     * @param starts minute of the day
     * @param ends minute of the day
     * @param road minutes of driving to it
     * @param position its place in the technician's day, from nought
     */
    public record Kept(
            UUID visit,
            UUID technician,
            @Nullable UUID second,
            boolean tried,
            LocalDate day,
            int starts,
            int ends,
            int road,
            int position) {}

    public record Unkept(UUID visit, Why why) {}

    /** Why a promise cannot be kept by this crew. */
    public enum Why {
        /** No day of its window is left. */
        WINDOW_OVER,
        /** Nobody works on any day that is left of it. */
        NOBODY_WORKS,
        /** Nobody who works then holds the tickets. */
        NO_TICKET,
        /** Two must go, and never two work together. */
        NO_SECOND,
        /** It is longer, with the road, than any day in its window. */
        TOO_LONG,
        /** The hours are given to others. */
        NO_HOURS;

        public String code() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /**
     * A day of somebody more that would keep these visits.
     *
     * @param tickets what they would have to hold
     * @param technicians one, or two who go together
     */
    public record MoreDay(LocalDate day, int technicians, Set<String> tickets, List<UUID> visits) {}

    /** Visits that the crew as it stands would keep, if one who works then held these tickets. */
    public record MoreTickets(Set<String> tickets, List<UUID> visits) {}

    public SeasonAnswer {
        kept = List.copyOf(kept);
        unkept = List.copyOf(unkept);
        moreDays = List.copyOf(moreDays);
        moreTickets = List.copyOf(moreTickets);
    }

    public boolean allKept() {
        return unkept.isEmpty();
    }

    /** Technician-days that would keep what a day more can keep. */
    public int technicianDays() {
        return moreDays.stream().mapToInt(MoreDay::technicians).sum();
    }
}
