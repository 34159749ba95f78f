package changeover.scheduling.dayplan;

import changeover.contracts.calendar.Window;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What the weeks hold against what the crew can do. A visit without a day weighs on all weeks of its window that are
 * still to come, in equal parts; a late one weighs on this week.
 */
public record SeasonLoad(List<Week> weeks) {

    /**
     * One week, in minutes of technicians' work.
     *
     * @param monday its first day
     * @param closed of visits that were closed in it
     * @param withDay of open visits that have their day in it
     * @param withoutDay of open visits that may be made in it and have no day
     * @param capacity of the crew, by their hours, holidays and days off
     */
    public record Week(LocalDate monday, int closed, int withDay, int withoutDay, int capacity) {

        public int wanted() {
            return closed + withDay + withoutDay;
        }

        public boolean isOver() {
            return wanted() > capacity;
        }
    }

    /** Open visits without a day that share a window. */
    record Waiting(Window window, int minutes) {}

    public SeasonLoad {
        weeks = List.copyOf(weeks);
    }

    /**
     * @param window whole weeks
     * @param closed minutes by the day the visit was closed
     * @param withDay minutes by the day the visit has
     * @param capacity minutes by day
     */
    static SeasonLoad of(
            Window window,
            LocalDate today,
            Map<LocalDate, Integer> closed,
            Map<LocalDate, Integer> withDay,
            List<Waiting> waiting,
            Map<LocalDate, Integer> capacity) {
        var weeks = new ArrayList<Week>();
        for (LocalDate monday = monday(window.from()); monday.isBefore(window.until()); monday = monday.plusWeeks(1)) {
            Window week = new Window(monday, monday.plusWeeks(1));
            weeks.add(new Week(
                    monday, sum(closed, week), sum(withDay, week), waiting(waiting, week, today), sum(capacity, week)));
        }
        return new SeasonLoad(weeks);
    }

    static LocalDate monday(LocalDate day) {
        return day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    }

    private static int sum(Map<LocalDate, Integer> byDay, Window week) {
        return week.from()
                .datesUntil(week.until())
                .mapToInt(day -> byDay.getOrDefault(day, 0))
                .sum();
    }

    private static int waiting(List<Waiting> waiting, Window week, LocalDate today) {
        return waiting.stream().mapToInt(visits -> share(visits, week, today)).sum();
    }

    /** This week's part of the minutes, by days; the parts of all weeks sum to the whole. */
    private static int share(Waiting visits, Window week, LocalDate today) {
        Window left = visits.window().since(today).orElse(Window.ofDay(today));
        long before = Math.clamp(left.from().until(week.from(), ChronoUnit.DAYS), 0, left.days());
        long with = Math.clamp(left.from().until(week.until(), ChronoUnit.DAYS), 0, left.days());
        return Math.toIntExact(visits.minutes() * with / left.days() - visits.minutes() * before / left.days());
    }
}
