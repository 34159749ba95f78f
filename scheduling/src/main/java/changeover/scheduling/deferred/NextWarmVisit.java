package changeover.scheduling.deferred;

import changeover.contracts.calendar.Season;
import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.LongestVisit;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A reading that was put off joins the home's next visit that may be in warm weather and has room for it; one that will be read
 * there anyway asks for nothing more. No trip is made for it alone.
 *
 * @param window the days on which the reading means something at that visit
 * @param added whether it is work that the visit did not have yet
 */
public record NextWarmVisit(UUID visitId, Window window, boolean added) {

    /**
     * A visit that has neither begun nor ended.
     *
     * @param day the day it has; null while it has none
     * @param reads whether it holds that very task already
     */
    public record Open(
            UUID visitId, Window window, @Nullable LocalDate day, int tasks, int minutes, boolean reads) {}

    /** What one visit would mean. */
    private record Chance(Open visit, Window days) {}

    /** @param after the day on which it was put off */
    public static Optional<NextWarmVisit> of(
            List<Open> visits, Season warm, LocalDate after, int minutes, LongestVisit longest) {
        return visits.stream()
                .flatMap(visit -> days(visit, warm, after).map(days -> new Chance(visit, days)).stream())
                .filter(one -> one.visit.reads || longest.holds(one.visit.tasks + 1, one.visit.minutes + minutes))
                .min(Comparator.comparing((Chance one) -> one.days.from())
                        .thenComparing(one -> !one.visit.reads)
                        .thenComparing(one -> one.days)
                        .thenComparing(one -> one.visit.visitId))
                .map(one -> new NextWarmVisit(one.visit.visitId, one.days, !one.visit.reads));
    }

    private static Optional<Window> days(Open visit, Season warm, LocalDate after) {
        Window may = visit.day == null ? visit.window : Window.ofDay(visit.day);
        return may.since(after.plusDays(1))
                .flatMap(left -> warm.meeting(left).stream()
                        .flatMap(season -> season.common(left).stream())
                        .findFirst());
    }
}
