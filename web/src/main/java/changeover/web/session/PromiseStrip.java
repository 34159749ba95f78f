package changeover.web.session;

import changeover.billing.documents.band.BandGeometry;
import changeover.billing.documents.band.BandShape;
import changeover.billing.documents.band.DayWords;
import changeover.billing.documents.band.HomeYear;
import changeover.billing.documents.band.HomeYear.Promise;
import changeover.billing.documents.band.HomeYear.Row;
import changeover.billing.documents.band.YearTable;
import changeover.contracts.calendar.Changeover;
import java.util.List;
import java.util.Locale;

/** One promise's year in a table's cell: a ring where a visit falls inside its bracket, a cross where none does. */
public final class PromiseStrip {

    private static final double HEIGHT = 22;
    private static final double MIDDLE = 11;

    private PromiseStrip() {}

    /**
     * The strip of one row of a year; the year's visits are taken as planned ones.
     *
     * @param words what a reader's aid says of it: "1 Apr to 15 Jun, 1 Sep to 15 Nov; no visit in the second"
     */
    public static String svg(HomeYear year, Row row, String words) {
        HomeYear alone =
                new HomeYear(year.begins(), year.today(), year.turns(), List.of(row), year.visits(), List.of());
        BandGeometry geometry = BandGeometry.of(alone, BandShape.DESK);
        Drawing svg = Drawing.small("strip", words, HEIGHT);
        for (BandGeometry.TurnBox turn : geometry.turns()) {
            boolean cooling = turn.kind() == Changeover.COOLING;
            svg.box(cooling ? "ct" : "ht", turn.from(), 1, turn.until(), HEIGHT - 2);
            svg.line(cooling ? "cd" : "hd", turn.from(), 1, turn.from(), HEIGHT - 1);
            svg.line(cooling ? "cd" : "hd", turn.until(), 1, turn.until(), HEIGHT - 1);
        }
        for (Promise promise : row.promises()) {
            promise(svg, alone, promise);
        }
        return svg.done();
    }

    private static void promise(Drawing svg, HomeYear year, Promise promise) {
        HomeYear one = new HomeYear(
                year.begins(),
                year.today(),
                List.of(),
                List.of(new Row("", List.of(promise))),
                year.visits(),
                List.of());
        BandGeometry geometry = BandGeometry.of(one, BandShape.DESK);
        boolean inside = year.visitOf(promise)
                .filter(visit ->
                        !visit.day().isBefore(promise.first()) && !visit.day().isAfter(promise.last()))
                .isPresent();
        for (BandGeometry.Bracket bracket : geometry.brackets()) {
            String ink = inside ? "i" : "l";
            svg.line(ink, bracket.from(), MIDDLE, bracket.until(), MIDDLE);
            svg.line(ink, bracket.from(), MIDDLE - 5, bracket.from(), MIDDLE + 5);
            svg.line(ink, bracket.until(), MIDDLE - 5, bracket.until(), MIDDLE + 5);
            if (!inside) {
                svg.at((bracket.from() + bracket.until()) / 2, MIDDLE, YearBand.CROSS);
            }
        }
        if (inside) {
            geometry.knots().forEach(knot -> svg.circle("i paper", knot.x(), MIDDLE, 4.2));
        }
    }

    /** The twelve initials over a column of strips. */
    public static String months(HomeYear year, Locale locale) {
        DayWords days = DayWords.of(locale);
        Drawing svg = Drawing.small("strip", YearTable.of(year, locale).summary(), 16);
        BandGeometry.of(year, BandShape.DESK)
                .months()
                .forEach(month -> svg.text(
                        "q", "middle", (month.from() + month.until()) / 2, 0, 12, days.initial(month.month())));
        return svg.done();
    }
}
