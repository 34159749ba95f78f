package changeover.web.session;

import changeover.billing.documents.band.BandGeometry;
import changeover.billing.documents.band.BandGeometry.Bracket;
import changeover.billing.documents.band.BandGeometry.HouseholdLine;
import changeover.billing.documents.band.BandGeometry.HouseholdMark;
import changeover.billing.documents.band.BandGeometry.Knot;
import changeover.billing.documents.band.BandGeometry.MonthBox;
import changeover.billing.documents.band.BandGeometry.Name;
import changeover.billing.documents.band.BandGeometry.Ring;
import changeover.billing.documents.band.BandGeometry.TurnBox;
import changeover.billing.documents.band.BandShape;
import changeover.billing.documents.band.BandWords;
import changeover.billing.documents.band.HomeYear;
import changeover.billing.documents.band.HomeYear.Done;
import changeover.billing.documents.band.HomeYear.Standing;
import changeover.billing.documents.band.YearTable;
import changeover.contracts.calendar.Changeover;
import java.util.Locale;

/** One home's twelve months: every promise a bracket, every visit a string through the brackets it keeps, today a thread. */
public final class YearBand {

    static final String CROSS = "<path class=\"l\" d=\"M-4.5 -4.5l9 9M4.5 -4.5l-9 9\"/>";
    private static final String SMALL_CROSS = "<path class=\"t\" d=\"M-3.5 -3.5l7 7M3.5 -3.5l-7 7\"/>";

    private final BandGeometry geometry;
    private final BandShape shape;
    private final BandWords words;
    private final Drawing svg;
    private final String id;

    private YearBand(HomeYear year, BandShape shape, Locale locale, String id) {
        this.geometry = BandGeometry.of(year, shape);
        this.shape = shape;
        this.words = BandWords.of(locale);
        this.id = id;
        String title = words.title(year.begins(), year.last());
        String summary = YearTable.of(year, locale).summary();
        this.svg = shape.namesAbove()
                ? Drawing.stretching("band-narrow", id, title, summary, geometry.height())
                : Drawing.scaling("band-wide", id, title, summary, 195, shape.plotWidth(), geometry.height());
    }

    /** Both drawings, for the desk and for narrow places; the style sheet shows one. */
    public static String svg(HomeYear year, Locale locale) {
        return svg(year, locale, "band");
    }

    /** As {@link #svg(HomeYear, Locale)}, where a page shows many homes: each drawing by a name of its own. */
    public static String svg(HomeYear year, Locale locale, String id) {
        return new YearBand(year, BandShape.DESK, locale, id).drawn()
                + new YearBand(year, BandShape.PHONE, locale, id + "-n").drawn();
    }

    private String drawn() {
        svg.hatch(id + "-cooling", "ch", 7, 45).hatch(id + "-heating", "hh", 7, -45);
        svg.box("white", 0, geometry.stripTop(), 1, shape.strip());
        geometry.turns().forEach(this::turn);
        geometry.months().forEach(this::month);
        svg.box("i", 0, geometry.stripTop(), 1, shape.strip());
        svg.line("i", 0, geometry.base(), 1, geometry.base());
        geometry.brackets().forEach(this::bracket);
        geometry.household().forEach(this::household);
        geometry.rings().reversed().forEach(this::string);
        geometry.knots().forEach(this::knot);
        geometry.today().forEach(this::thread);
        geometry.rings().reversed().forEach(this::ring);
        geometry.names().forEach(this::name);
        return svg.done();
    }

    private void turn(TurnBox turn) {
        boolean cooling = turn.kind() == Changeover.COOLING;
        double top = geometry.stripTop();
        svg.box(cooling ? "ct" : "ht", turn.from(), top, turn.until(), geometry.base() - top);
        String hatch = id + (cooling ? "-cooling" : "-heating");
        svg.hatched(hatch, turn.from(), geometry.stripBottom() - 9, turn.until(), 9);
        svg.line(cooling ? "cd" : "hd", turn.from(), geometry.stripBottom(), turn.from(), geometry.base());
        svg.line(cooling ? "cd" : "hd", turn.until(), geometry.stripBottom(), turn.until(), geometry.base());
    }

    private void month(MonthBox month) {
        double top = geometry.stripTop();
        if (month.from() > 0) {
            svg.line("i", month.from(), top, month.from(), geometry.stripBottom());
            svg.line("f", month.from(), geometry.stripBottom(), month.from(), geometry.base());
        }
        String name = shape.namesAbove()
                ? words.days().initial(month.month())
                : words.days().month(month.month());
        svg.text("b", "middle", (month.from() + month.until()) / 2, 0, top + 15.5, name);
        if (month.yearChanges()) {
            svg.text("q", "start", month.from(), 3, top - 6, String.valueOf(month.year()));
        }
    }

    private void bracket(Bracket bracket) {
        String ink = bracket.late() ? "l" : "i";
        double y = bracket.y();
        svg.line(ink, bracket.from(), y, bracket.until(), y);
        if (bracket.opensHere()) {
            svg.line(ink, bracket.from(), y - 6, bracket.from(), y + 6);
        }
        if (bracket.endsHere()) {
            svg.line(ink, bracket.until(), y - 6, bracket.until(), y + 6);
        }
        if (bracket.late()) {
            svg.at(bracket.until(), y, CROSS);
        }
    }

    private void string(Ring ring) {
        String ink = ring.standing() == Standing.CLOSED ? "s" : "p";
        svg.line(ink, ring.x(), ring.y() + shape.ring(), ring.x(), geometry.stripTop());
        svg.line(ink, ring.x(), geometry.stripBottom(), ring.x(), ring.stringEnd());
    }

    private void knot(Knot knot) {
        if (knot.standing() == Standing.CLOSED) {
            svg.circle("fs", knot.x(), knot.y(), 4.6);
        } else {
            svg.circle("n paper", knot.x(), knot.y(), 4.2);
        }
    }

    private void ring(Ring ring) {
        boolean closed = ring.standing() == Standing.CLOSED;
        double radius = shape.ring();
        svg.circle((closed ? "s" : "p") + " paper", ring.x(), ring.y(), radius);
        if (closed) {
            svg.circle("s1", ring.x(), ring.y(), radius - 3.5);
        }
        if (ring.standing() == Standing.MOVING) {
            svg.at(ring.x(), ring.y(), "<path class=\"i\" d=\"M-17 17L17 -17\"/>");
        }
        String ink = closed ? "v" : "b halo";
        svg.text(
                ink,
                "middle",
                ring.x(),
                0,
                ring.y() + 1,
                String.valueOf(ring.day().getDayOfMonth()));
        String month = words.days().month(ring.day().getMonth());
        svg.text(ink + " tiny", "middle", ring.x(), 0, ring.y() + 11, month);
    }

    private void thread(BandGeometry.Thread today) {
        double top = geometry.stripTop();
        svg.line("t", today.x(), top - 6, today.x(), geometry.height());
        svg.circle("t paper", today.x(), top - 9, 3.6);
        String anchor = today.labelLeft() ? "end" : "start";
        svg.text("r halo", anchor, today.x(), today.labelLeft() ? -9 : 9, top - 5, words.today(today.day()));
    }

    private void household(HouseholdLine line) {
        svg.line("f", 0, line.y(), 1, line.y());
        line.marks().forEach(mark -> mark(mark, line.y()));
        name(new Name(line.name(), shape.namesAbove() ? line.y() - 22 : line.y() - 5), "");
    }

    private void mark(HouseholdMark mark, double y) {
        if (mark.done() == Done.NOT_DONE) {
            svg.at(mark.x(), y - 7, SMALL_CROSS);
        } else {
            boolean done = mark.done() == Done.DONE;
            svg.line(done ? "ss" : "n", mark.x(), y - (done ? 13 : 7), mark.x(), y);
        }
    }

    private void name(Name name) {
        name(name, "b ");
    }

    private void name(Name name, String weight) {
        if (shape.namesAbove()) {
            svg.text(weight + "halo", "start", 0, 3, name.y() + 5, cut(name.text(), 40));
        } else {
            svg.text(weight, "end", 0, -13, name.y() + 5, cut(name.text(), 26));
        }
    }

    private static String cut(String words, int most) {
        return words.length() <= most ? words : words.substring(0, most - 1).strip() + "…";
    }
}
