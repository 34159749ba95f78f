package changeover.web.session;

import changeover.billing.documents.band.DayWords;
import changeover.scheduling.intervals.HouseholdInterval;
import changeover.scheduling.intervals.Seen;
import java.util.List;
import java.util.Locale;

/**
 * How the chance that a filter has turned grey grows from the day it was put in, with what was seen below: a dot on the day
 * it was found grey, a line from the last clean look to it, a ring where it was still clean. The same figures stand in a table.
 */
public final class FilterCurve {

    private static final double TOP = 24;
    private static final double PLOT = 150;
    private static final double BASE = TOP + PLOT;
    private static final double LEFT = 0.1;
    private static final double ROW = 12;
    private static final int MOST_ROWS = 12;

    private final HouseholdInterval learned;
    private final List<HouseholdInterval.Point> curve;
    private final List<Seen> seen;
    private final boolean french;
    private final Drawing svg;

    private FilterCurve(HouseholdInterval learned, String title, String words, Locale locale) {
        this.learned = learned;
        this.curve = learned.curve();
        this.seen = learned.seen().reversed().stream().limit(MOST_ROWS).toList();
        this.french = DayWords.of(locale).french();
        this.svg = Drawing.stretching("filter-curve", "curve", title, words, BASE + 30 + seen.size() * ROW + 8);
    }

    /** The curve, stretching to its place, with the latest twelve sights. */
    public static String svg(HouseholdInterval learned, String title, String words, Locale locale) {
        return new FilterCurve(learned, title, words, locale).drawn();
    }

    private String drawn() {
        svg.hatch("curve-likely", "ih", 6, 45);
        for (int step = 1; step < curve.size(); step++) {
            HouseholdInterval.Point point = curve.get(step);
            double from = x(curve.get(step - 1).days());
            if (point.high() > point.low()) {
                svg.hatched("curve-likely", from, y(point.high()), x(point.days()), y(point.low()) - y(point.high()));
            }
        }
        scale();
        for (int step = 1; step < curve.size(); step++) {
            HouseholdInterval.Point before = curve.get(step - 1);
            HouseholdInterval.Point point = curve.get(step);
            svg.line("i2", x(before.days()), y(before.chanceGrey()), x(point.days()), y(point.chanceGrey()));
        }
        advice();
        sights();
        return svg.done();
    }

    private void scale() {
        for (int percent = 0; percent <= 100; percent += 25) {
            svg.line("f", LEFT, y(percent / 100.0), 1, y(percent / 100.0));
            svg.text("q", "end", LEFT, -6, y(percent / 100.0) + 4, percent + (french ? "\u00a0%" : "%"));
        }
        double last = curve.getLast().days();
        int weeks = last > 400 ? 26 : last > 200 ? 8 : 4;
        for (int week = 0; week * 7 <= last; week += weeks) {
            svg.line("n", x(week * 7), BASE, x(week * 7), BASE + 5);
            svg.text("q", week == 0 ? "start" : "middle", x(week * 7), 0, BASE + 19, String.valueOf(week));
        }
    }

    /** The accepted chance across, the look and the change down. */
    private void advice() {
        svg.line("p", LEFT, y(learned.setting()), 1, y(learned.setting()));
        int look = learned.rhythm().checkAfterDays();
        int change = learned.rhythm().changeAfterDays();
        if (look < change) {
            svg.line("s", x(look), TOP - 4, x(look), BASE);
            svg.text("v halo", anchor(x(look)), x(look), 0, TOP - 10, french ? "regarder" : "look");
        }
        boolean close = look < change && x(change) - x(look) < 0.22;
        svg.line("t", x(change), TOP - 4, x(change), BASE);
        String words = french ? "remplacer" : "change";
        svg.text("r halo", anchor(x(change)), x(change), 0, close ? TOP + 8 : TOP - 10, words);
    }

    private void sights() {
        double y = BASE + 34;
        for (Seen one : seen) {
            switch (one) {
                case Seen.GreyAt(double days) -> svg.circle("fi", x(days), y, 4);
                case Seen.GreyBetween(double clean, double grey) -> {
                    svg.line("i", x(clean), y, x(grey), y);
                    svg.circle("fi", x(grey), y, 4);
                    if (clean > 0) {
                        svg.circle("i paper", x(clean), y, 3.6);
                    }
                }
                case Seen.CleanAt(double days) -> svg.circle("i paper", x(days), y, 3.6);
            }
            y += ROW;
        }
    }

    private static String anchor(double x) {
        return x < 0.15 ? "start" : x > 0.9 ? "end" : "middle";
    }

    private double x(double days) {
        return LEFT + (1 - LEFT) * Math.min(1, days / curve.getLast().days());
    }

    private static double y(double chance) {
        return BASE - chance * PLOT;
    }
}
