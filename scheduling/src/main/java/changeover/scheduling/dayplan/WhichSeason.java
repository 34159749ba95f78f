package changeover.scheduling.dayplan;

import changeover.contracts.calendar.Season;
import changeover.contracts.calendar.Window;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Every open visit is planned with a season: of those that hold half of its days or more, the first in the business's own list;
 * where none does, the one that holds most. A season that holds its whole window plans it too. What is late goes with the season
 * that is under way, else the next, in its first days.
 *
 * @param seasons in the business's own order
 * @param tomorrow the first day that anything may still be given
 */
public record WhichSeason(List<Season> seasons, LocalDate tomorrow) {

    /** Days in which what is late should find its hour. */
    static final int LATE_DAYS = 14;

    public WhichSeason {
        seasons = List.copyOf(seasons);
    }

    /** @param visit the window of a visit, or of a promise */
    public boolean holds(Window season, Window visit) {
        return isWhole(season, visit)
                || own(season, visit).filter(season::equals).isPresent();
    }

    private static boolean isWhole(Window season, Window visit) {
        return season.contains(visit.from()) && season.contains(visit.last());
    }

    /** By the days that are left of it; by all of them once it is over. */
    private Optional<Window> own(Window asked, Window visit) {
        Window left = visit.since(tomorrow).orElse(visit);
        List<Window> meeting = openings(asked, left);
        return meeting.stream()
                .filter(one -> 2 * shared(one, left) >= left.days())
                .findFirst()
                .or(() ->
                        meeting.stream().reduce((one, other) -> shared(other, left) > shared(one, left) ? other : one));
    }

    private static long shared(Window season, Window visit) {
        return season.common(visit).map(Window::days).orElse(0L);
    }

    /** A season's days may have been moved since they were asked about: those count as they were asked. */
    private List<Window> openings(Window asked, Window meeting) {
        List<Window> known =
                seasons.stream().flatMap(one -> one.meeting(meeting).stream()).toList();
        return known.contains(asked) || !asked.meets(meeting)
                ? known
                : Stream.concat(Stream.of(asked), known.stream()).toList();
    }

    /** Whether no day is left of it that anything may still be given. */
    public boolean isLate(Window visit) {
        return !visit.until().isAfter(tomorrow);
    }

    /** Whether what is late goes with this season. */
    public boolean takesLate(Window season) {
        List<Window> known = Stream.concat(seasons.stream().map(one -> one.openingAt(tomorrow)), Stream.of(season))
                .toList();
        return known.stream()
                .filter(one -> one.contains(tomorrow))
                .findFirst()
                .or(() -> known.stream()
                        .filter(one -> one.from().isAfter(tomorrow))
                        .min(Comparator.comparing(Window::from)))
                .filter(season::equals)
                .isPresent();
    }

    /**
     * The days that a visit may have in a season; empty where it goes with another.
     *
     * @param first the first day on which anything may be given; a window that is over by then stays as it is, and is said
     */
    public Optional<Window> days(Window season, Window visit, LocalDate first) {
        if (isLate(visit) && (takesLate(season) || isWhole(season, visit))) {
            return Optional.of(Window.ofDays(first, first.plusDays(LATE_DAYS - 1)))
                    .flatMap(days -> season.from().isAfter(first)
                            ? season.common(
                                    Window.ofDays(season.from(), season.from().plusDays(LATE_DAYS - 1)))
                            : season.common(days))
                    .or(() -> season.common(visit));
        }
        return holds(season, visit)
                ? season.common(visit).map(days -> days.since(first).orElse(days))
                : Optional.empty();
    }
}
