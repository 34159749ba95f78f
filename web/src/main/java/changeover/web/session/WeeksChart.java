package changeover.web.session;

import changeover.billing.documents.band.DayWords;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;

/** A season's weeks: what is closed, what has a day, what has none, against what the crew can carry; what is over is said in hours. */
public final class WeeksChart {

    /**
     * One week's minutes of visits.
     *
     * @param monday the week's first day
     * @param carries what the crew can carry
     */
    public record Week(LocalDate monday, int carries, int closed, int hasDay, int noDay) {

        /** What is more than the crew can carry. */
        public int over() {
            return Math.max(0, all() - carries);
        }

        /** What the crew could still take. */
        public int free() {
            return Math.max(0, carries - all());
        }

        public int all() {
            return closed + hasDay + noDay;
        }
    }

    private static final double TOP = 44;
    private static final double PLOT = 160;
    private static final double BASE = TOP + PLOT;
    private static final double LEFT = 0.07;

    private final List<Week> weeks;
    private final DayWords days;
    private final double most;
    private final Drawing svg;

    private WeeksChart(List<Week> weeks, Locale locale, String title, String words) {
        this.weeks = weeks;
        this.days = DayWords.of(locale);
        int highest = weeks.stream()
                .mapToInt(week -> Math.max(week.carries(), week.all()))
                .max()
                .orElse(0);
        this.most = Math.max(60, highest);
        this.svg = Drawing.stretching("weeks", "weeks", title, words, BASE + 36);
    }

    /**
     * The chart, stretching to its place; the same figures stand in a table on the page.
     *
     * @param title "Hours of visits by week, 31 August to 15 November"
     * @param words one sentence: which weeks are over, and by how much
     */
    public static String svg(List<Week> weeks, LocalDate today, String title, String words, Locale locale) {
        return new WeeksChart(weeks, locale, title, words).drawn(today);
    }

    private String drawn(LocalDate today) {
        svg.hatch("weeks-day", "ih", 6, 45).hatch("weeks-closed", "sh", 5, 45).mesh("weeks-over", "rh", 5);
        scale();
        for (int i = 0; i < weeks.size(); i++) {
            bar(i, weeks.get(i));
        }
        capacity();
        for (int i = 0; i < weeks.size(); i++) {
            over(i, weeks.get(i));
            thread(i, weeks.get(i), today);
        }
        return svg.done();
    }

    private void scale() {
        double step = most / 60 <= 12 ? 3 : most / 60 <= 45 ? 10 : most / 60 <= 130 ? 30 : 100;
        for (double hours = 0; hours * 60 <= most; hours += step) {
            svg.line("f", LEFT, y(hours * 60), 1, y(hours * 60));
            svg.text("q", "end", LEFT, -6, y(hours * 60) + 4, String.valueOf((int) hours));
        }
    }

    private void bar(int i, Week week) {
        double from = LEFT + (i + 0.15) * slot();
        double until = LEFT + (i + 0.85) * slot();
        double closed = Math.min(week.closed(), week.carries());
        double hasDay = Math.min(week.closed() + week.hasDay(), Math.max(week.carries(), week.closed()));
        if (week.noDay() > 0) {
            double top = y(Math.min(week.all(), Math.max(week.carries(), hasDay)));
            svg.box("p", from, top, until, BASE - top);
        }
        if (week.hasDay() > 0) {
            svg.box("paper", from, y(hasDay), until, y(closed) - y(hasDay));
            svg.hatched("weeks-day", from, y(hasDay), until, y(closed) - y(hasDay));
            svg.box("i", from, y(hasDay), until, y(closed) - y(hasDay));
        }
        if (week.closed() > 0) {
            svg.box("paper", from, y(week.closed()), until, BASE - y(week.closed()));
            svg.hatched("weeks-closed", from, y(week.closed()), until, BASE - y(week.closed()));
            svg.box("s", from, y(week.closed()), until, BASE - y(week.closed()));
        }
        double middle = (from + until) / 2;
        svg.text(
                "b light",
                "middle",
                middle,
                0,
                BASE + 16,
                String.valueOf(week.monday().getDayOfMonth()));
        boolean opens =
                i == 0 || weeks.get(i - 1).monday().getMonth() != week.monday().getMonth();
        boolean crowded = i == 0
                && weeks.size() > 1
                && weeks.get(1).monday().getMonth() != week.monday().getMonth();
        if (opens && !crowded) {
            svg.text(
                    "q",
                    "middle",
                    middle,
                    0,
                    BASE + 32,
                    days.month(week.monday().getMonth()));
        }
    }

    /** A stepped line, one step where two weeks differ. */
    private void capacity() {
        for (int i = 0; i < weeks.size(); i++) {
            double y = y(weeks.get(i).carries());
            svg.line("i2", LEFT + i * slot(), y, LEFT + (i + 1) * slot(), y);
            if (i > 0 && weeks.get(i - 1).carries() != weeks.get(i).carries()) {
                svg.line("i2", LEFT + i * slot(), y(weeks.get(i - 1).carries()), LEFT + i * slot(), y);
            }
        }
    }

    private void over(int i, Week week) {
        if (week.over() > 0) {
            double from = LEFT + (i + 0.15) * slot();
            double until = LEFT + (i + 0.85) * slot();
            double top = y(week.all());
            svg.box("paper", from, top, until, y(week.carries()) - top);
            svg.hatched("weeks-over", from, top, until, y(week.carries()) - top);
            svg.box("t", from, top, until, y(week.carries()) - top);
            String hours = "+" + Math.round(week.over() / 60.0);
            svg.text("r halo", "middle", (from + until) / 2, 0, top - 6, hours);
        }
    }

    /** Today's thread stays above the bars, so that it crosses none. */
    private void thread(int i, Week week, LocalDate today) {
        if (!today.isBefore(week.monday()) && today.isBefore(week.monday().plusDays(7))) {
            double x = LEFT + (i + (today.getDayOfWeek().getValue() - 0.5) / 7) * slot();
            double high = Math.min(y(week.all()), y(week.carries())) - (week.over() > 0 ? 22 : 4);
            svg.line("t", x, 12, x, Math.max(18, high)).circle("t paper", x, 8, 3.6);
            boolean right = i > weeks.size() / 2;
            String words = days.french() ? "Aujourd’hui" : "Today";
            svg.text("r halo", right ? "end" : "start", x, right ? -9 : 9, 12, words);
        }
    }

    private double slot() {
        return (1 - LEFT) / Math.max(1, weeks.size());
    }

    private double y(double minutes) {
        return BASE - minutes / most * PLOT;
    }
}
