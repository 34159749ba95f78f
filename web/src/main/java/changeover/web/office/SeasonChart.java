package changeover.web.office;

import changeover.billing.documents.band.DayWords;
import changeover.contracts.calendar.Window;
import changeover.scheduling.dayplan.SeasonLoad;
import changeover.scheduling.dayplan.SeasonLoads;
import changeover.web.session.Frame;
import changeover.web.session.WeeksChart;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Locale;

/** The weeks around today: what was closed, what has a day, what has none, against what the crew can carry. */
@ApplicationScoped
class SeasonChart {

    private static final int WEEKS_BEFORE = 4;
    private static final int WEEKS = 12;

    /** The drawing, and the same figures as a table, in hours. */
    public record Weeks(String svg, int over, long overHours, List<Row> rows) {}

    public record Row(String monday, String closed, String withDay, String withoutDay, String capacity, boolean over) {}

    @Inject
    SeasonLoads loads;

    Weeks of(Frame frame, String title) {
        LocalDate first = first(frame.today());
        SeasonLoad load = loads.of(new Window(first, first.plusWeeks(WEEKS)), frame.today());
        List<WeeksChart.Week> weeks = load.weeks().stream()
                .map(week -> new WeeksChart.Week(
                        week.monday(), week.capacity(), week.closed(), week.withDay(), week.withoutDay()))
                .toList();
        Locale locale = frame.locale();
        int over = (int) weeks.stream().filter(week -> week.over() > 0).count();
        long hours = Math.round(weeks.stream().mapToInt(WeeksChart.Week::over).sum() / 60.0);
        return new Weeks(
                WeeksChart.svg(weeks, frame.today(), title, title, locale),
                over,
                hours,
                weeks.stream().map(week -> row(week, locale)).toList());
    }

    LocalDate first(LocalDate today) {
        return today.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY)).minusWeeks(WEEKS_BEFORE);
    }

    LocalDate last(LocalDate today) {
        return first(today).plusWeeks(WEEKS).minusDays(1);
    }

    private static Row row(WeeksChart.Week week, Locale locale) {
        return new Row(
                DayWords.of(locale).brief(week.monday()),
                hours(week.closed(), locale),
                hours(week.hasDay(), locale),
                hours(week.noDay(), locale),
                hours(week.carries(), locale),
                week.over() > 0);
    }

    private static String hours(int minutes, Locale locale) {
        return minutes == 0 ? "" : String.format(locale, "%.1f", minutes / 60.0);
    }
}
