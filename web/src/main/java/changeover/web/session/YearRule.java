package changeover.web.session;

import changeover.billing.documents.band.BandWords;
import changeover.billing.documents.band.DayWords;
import changeover.billing.documents.band.Turn;
import changeover.contracts.calendar.Changeover;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Under the header runs the calendar year, 22 units high: both turns hatched, today a thread with its date. */
public final class YearRule {

    private static final double HEIGHT = 22;

    private static final int KEPT = 500;

    /** Every page of a day bears the same strip, so it is drawn once. */
    private static final Map<Strip, String> DRAWN = new ConcurrentHashMap<>();

    private record Strip(LocalDate today, List<Turn> turns, Locale locale) {}

    private YearRule() {}

    /** The strip of the year in which {@code today} lies. */
    public static String svg(LocalDate today, List<Turn> turns, Locale locale) {
        Strip strip = new Strip(today, turns, locale);
        String kept = DRAWN.get(strip);
        if (kept == null) {
            kept = drawn(today, turns, locale);
            if (DRAWN.size() >= KEPT) {
                DRAWN.clear();
            }
            DRAWN.put(strip, kept);
        }
        return kept;
    }

    private static String drawn(LocalDate today, List<Turn> turns, Locale locale) {
        DayWords days = DayWords.of(locale);
        LocalDate first = today.withDayOfYear(1);
        Drawing strip = Drawing.stretching(
                "",
                "rule",
                String.valueOf(today.getYear()),
                BandWords.of(locale).today(today),
                HEIGHT);
        strip.hatch("rule-cooling", "ch", 6, 45).hatch("rule-heating", "hh", 6, -45);
        for (Turn turn : turns) {
            turn(strip, turn, first);
        }
        double now = fraction(first, today) + 0.5 / first.lengthOfYear();
        for (int month = 0; month < 12; month++) {
            month(strip, days, first.plusMonths(month), first, now);
        }
        strip.line("n", 1, 0, 1, HEIGHT);
        strip.line("t", now, 0, now, HEIGHT).circle("fr", now, 2, 3.5);
        return strip.text("r long", now > 0.93 ? "end" : "start", now, now > 0.93 ? -7 : 7, 16, days.brief(today))
                .done();
    }

    private static void turn(Drawing strip, Turn turn, LocalDate first) {
        double from = Math.max(0, fraction(first, turn.window().from()));
        double until = Math.min(1, fraction(first, turn.window().until()));
        if (until > from) {
            boolean cooling = turn.kind() == Changeover.COOLING;
            strip.box(cooling ? "ct" : "ht", from, 0, until, HEIGHT);
            strip.hatched(cooling ? "rule-cooling" : "rule-heating", from, 0, until, 7);
        }
    }

    /** A month's name is left out where today's date stands on it. */
    private static void month(Drawing strip, DayWords days, LocalDate month, LocalDate first, double now) {
        double x = fraction(first, month);
        double labelFrom = now > 0.93 ? now - 0.06 : now - 0.004;
        double labelUntil = now > 0.93 ? now + 0.004 : now + 0.06;
        strip.line("n", x, 0, x, HEIGHT);
        strip.line("n", x + 1 / 24.0, 0, x + 1 / 24.0, 3);
        if (x + 0.034 < labelFrom || x > labelUntil) {
            strip.text("q long", "start", x, 5, 16, days.month(month.getMonth()));
        }
        strip.text("q short", "middle", x + 1 / 24.0, 0, 17, days.initial(month.getMonth()));
    }

    private static double fraction(LocalDate first, LocalDate day) {
        return ChronoUnit.DAYS.between(first, day) / (double) first.lengthOfYear();
    }
}
