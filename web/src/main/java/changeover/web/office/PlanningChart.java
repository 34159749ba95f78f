package changeover.web.office;

import changeover.billing.documents.band.DayWords;
import changeover.scheduling.dayplan.season.SeasonRunReading;
import changeover.web.session.Frame;
import changeover.web.session.WeeksChart;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The weeks of a planned season against the crew that was asked about; what cannot be kept stands in its last week. */
final class PlanningChart {

    private final List<SeasonRunReading.Week> weeks;
    private final Map<LocalDate, Integer> unkept = new HashMap<>();

    PlanningChart(List<SeasonRunReading.Week> weeks, List<SeasonRunReading.Row> unkept) {
        this.weeks = weeks;
        unkept.forEach(one -> this.unkept.merge(
                one.last().with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY)), one.minutes(), Integer::sum));
    }

    String svg(Frame frame) {
        if (weeks.isEmpty()) {
            return "";
        }
        DayWords words = DayWords.of(frame.locale());
        boolean french = frame.locale().getLanguage().equals("fr");
        String from = words.brief(weeks.getFirst().monday());
        String until = words.brief(weeks.getLast().monday().plusDays(6));
        String title = french
                ? "Heures planifiées par semaine, du " + from + " au " + until
                : "Planned hours by week, " + from + " to " + until;
        return WeeksChart.svg(
                weeks.stream()
                        .map(week -> new WeeksChart.Week(
                                week.monday(),
                                week.holds(),
                                0,
                                week.booked() + week.given(),
                                unkept.getOrDefault(week.monday(), 0)))
                        .toList(),
                frame.today(),
                title,
                title,
                frame.locale());
    }

    List<SeasonRunPages.Week> rows(Frame frame) {
        Locale locale = frame.locale();
        return weeks.stream()
                .map(week -> new SeasonRunPages.Week(
                        week.monday().toString(),
                        frame.brief(week.monday()),
                        hours(week.holds(), locale),
                        hours(week.booked(), locale),
                        hours(week.given(), locale),
                        hours(Math.max(0, week.holds() - week.booked() - week.given()), locale)))
                .toList();
    }

    private static String hours(int minutes, Locale locale) {
        return minutes == 0 ? "" : String.format(locale, "%.1f", minutes / 60.0);
    }
}
