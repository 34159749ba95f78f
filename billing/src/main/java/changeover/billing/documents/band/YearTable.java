package changeover.billing.documents.band;

import changeover.billing.documents.band.HomeYear.Promise;
import changeover.billing.documents.band.HomeYear.Row;
import changeover.billing.documents.band.HomeYear.Standing;
import changeover.billing.documents.band.HomeYear.Visit;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The year said in words: each promise with its last day and how it stands, late ones first, then by last day. */
public record YearTable(List<Line> lines, String summary) {

    /**
     * One promise.
     *
     * @param visitDay the day of its visit, or empty
     * @param standing a sentence without its full stop
     */
    public record Line(
            LocalDate lastDay,
            String last,
            String machine,
            String what,
            String promised,
            String visitDay,
            boolean closed,
            boolean pencilled,
            boolean late,
            String standing) {}

    /** The table of a year and its one sentence, in the language of the locale. */
    public static YearTable of(HomeYear year, Locale locale) {
        BandWords words = BandWords.of(locale);
        List<Line> lines = new ArrayList<>();
        for (Row row : year.rows()) {
            for (Promise promise : row.promises()) {
                lines.add(line(year, row, promise, words));
            }
        }
        lines.sort(Comparator.comparing((Line line) -> !line.late()).thenComparing(Line::lastDay));
        return new YearTable(lines, summary(year, words));
    }

    private static Line line(HomeYear year, Row row, Promise promise, BandWords words) {
        Optional<Visit> visit = year.visitOf(promise);
        DayWords days = words.days();
        return new Line(
                promise.last(),
                days.briefWithYear(promise.last()),
                row.name(),
                promise.what(),
                words.fromTo(promise.first(), promise.last()),
                visit.map(found -> days.brief(found.day())).orElse(""),
                year.kept(promise),
                visit.isPresent() && !year.kept(promise),
                year.late(promise),
                standing(year, promise, visit, words));
    }

    private static String standing(HomeYear year, Promise promise, Optional<Visit> visit, BandWords words) {
        long visitPast = visit.map(found -> ChronoUnit.DAYS.between(promise.last(), found.day()))
                .orElse(0L);
        if (year.kept(promise)) {
            return visitPast > 0 ? words.keptLate(visitPast) : words.kept();
        }
        if (year.late(promise)) {
            long days = ChronoUnit.DAYS.between(promise.last(), year.today());
            return visit.isPresent() && visitPast > 0 ? words.lateWithVisit(days, visitPast) : words.late(days);
        }
        if (visit.isEmpty()) {
            return words.noDay();
        }
        if (visitPast > 0) {
            return words.willBeLate(visitPast);
        }
        return visit.get().standing() == Standing.MOVING ? words.moving() : words.keptIfDayHolds();
    }

    private static String summary(HomeYear year, BandWords words) {
        List<Promise> all = year.promises();
        long kept = all.stream().filter(year::kept).count();
        long late = all.stream().filter(year::late).count();
        long withDay = all.stream()
                .filter(promise -> !year.kept(promise) && !year.late(promise))
                .filter(promise -> year.visitOf(promise).isPresent())
                .count();
        Optional<LocalDate> next = year.visits().stream()
                .filter(visit -> visit.standing() != Standing.CLOSED)
                .map(Visit::day)
                .filter(day -> !day.isBefore(year.today()))
                .min(Comparator.naturalOrder());
        return words.summary(all.size(), kept, late, withDay, next);
    }
}
