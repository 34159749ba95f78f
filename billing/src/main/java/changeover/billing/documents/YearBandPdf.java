package changeover.billing.documents;

import changeover.billing.documents.band.BandGeometry;
import changeover.billing.documents.band.BandShape;
import changeover.billing.documents.band.BandWords;
import changeover.billing.documents.band.DayWords;
import changeover.billing.documents.band.HomeYear;
import changeover.billing.documents.band.HomeYear.Standing;
import changeover.contracts.calendar.Changeover;

/** The year band on paper: what is filled, open, dashed or crossed says everything, tints only help. */
final class YearBandPdf {

    private static final float POINT = 0.75f;
    private static final float NAMES = 128;
    private static final float PLOT = Flow.WIDTH - NAMES;
    private static final BandShape SHAPE = new BandShape(PLOT / POINT, 21, 16.5, 10, false, 14.5);
    private static final float HATCH = 5;

    private final Canvas page;
    private final DayWords days;
    private final BandWords words;
    private final BandGeometry band;
    private final float left;
    private final float top;

    private YearBandPdf(Flow flow, HomeYear year) {
        this.page = flow.page();
        this.days = DayWords.of(flow.words().language());
        this.words = new BandWords(days);
        this.band = BandGeometry.of(year, SHAPE);
        this.left = Flow.LEFT + NAMES;
        this.top = flow.y();
    }

    /** In points. */
    static float height(HomeYear year) {
        return (float) BandGeometry.of(year, SHAPE).height() * POINT + 4;
    }

    static void draw(Flow flow, HomeYear year) {
        new YearBandPdf(flow, year).draw();
        flow.down(height(year));
    }

    private void draw() {
        band.turns().forEach(this::turn);
        months();
        page.line(Ink.INK, 0.75f, left, y(band.base()), left + PLOT, y(band.base()));
        band.brackets().forEach(this::bracket);
        band.rings().forEach(this::string);
        band.knots().forEach(this::knot);
        band.rings().forEach(this::ring);
        band.household().forEach(this::household);
        band.names().forEach(name -> name(name.text(), y(name.y()), Typeface.BOLD));
        band.today().forEach(this::today);
    }

    private void turn(BandGeometry.TurnBox turn) {
        boolean cooling = turn.kind() == Changeover.COOLING;
        float from = x(turn.from());
        float width = x(turn.until()) - from;
        float foot = y(band.stripBottom());
        float height = y(band.base()) - foot;
        page.block(cooling ? Ink.COOLING_TINT : Ink.HEATING_TINT, from, foot, width, height);
        page.dottedLine(Ink.LINE, 0.75f, from, foot, from, foot + height);
        page.dottedLine(Ink.LINE, 0.75f, from + width, foot, from + width, foot + height);
        Ink ink = cooling ? Ink.COOLING : Ink.HEATING;
        page.clipped(from, foot - HATCH, width, HATCH, () -> {
            for (float at = from - HATCH; at < from + width + HATCH; at += 4.2f) {
                float head = cooling ? at + HATCH : at;
                float heel = cooling ? at : at + HATCH;
                page.line(ink, 0.8f, heel, foot, head, foot - HATCH);
            }
        });
    }

    private void months() {
        float head = y(band.stripTop());
        float foot = y(band.stripBottom());
        for (BandGeometry.MonthBox month : band.months()) {
            float from = x(month.from());
            float middle = (from + x(month.until())) / 2;
            page.line(Ink.RULE, 0.6f, from, foot, from, y(band.base()));
            page.line(Ink.INK, 0.75f, from, head, from, foot);
            page.textCentre(
                    Typeface.BOLD,
                    8.25f,
                    Ink.INK,
                    middle,
                    head + 8.5f,
                    x(month.until()) - from - 2,
                    days.month(month.month()));
            if (month.yearChanges()) {
                page.text(Typeface.REGULAR, 8.25f, Ink.INK, from + 2, head - 3, String.valueOf(month.year()));
            }
        }
        page.box(Ink.INK, 0.9f, left, head, PLOT, foot - head);
    }

    private void bracket(BandGeometry.Bracket bracket) {
        Ink ink = bracket.late() ? Ink.RED : Ink.INK;
        float width = bracket.late() ? 1.8f : 1.1f;
        float at = y(bracket.y());
        float from = x(bracket.from());
        float until = x(bracket.until());
        page.line(ink, width, from, at, until, at);
        if (bracket.opensHere()) {
            page.line(ink, width, from, at - 3.6f, from, at + 3.6f);
        }
        if (bracket.endsHere() && !bracket.late()) {
            page.line(ink, width, until, at - 3.6f, until, at + 3.6f);
        }
        if (bracket.late()) {
            page.line(ink, 1.3f, until - 3, at - 3, until + 3, at + 3);
            page.line(ink, 1.3f, until - 3, at + 3, until + 3, at - 3);
        }
    }

    private void string(BandGeometry.Ring ring) {
        float at = x(ring.x());
        float from = y(ring.y()) + radius();
        if (ring.standing() == Standing.CLOSED) {
            page.line(Ink.STAMP, 1.1f, at, from, at, y(band.stripTop()));
            page.line(Ink.STAMP, 1.1f, at, y(band.stripBottom()), at, y(ring.stringEnd()));
        } else {
            page.dashedLine(Ink.INK, 0.9f, at, from, at, y(band.stripTop()));
            page.dashedLine(Ink.INK, 0.9f, at, y(band.stripBottom()), at, y(ring.stringEnd()));
        }
    }

    private void ring(BandGeometry.Ring ring) {
        float at = x(ring.x());
        float middle = y(ring.y());
        boolean closed = ring.standing() == Standing.CLOSED;
        Ink ink = closed ? Ink.STAMP : Ink.INK;
        page.disc(Ink.WHITE, at, middle, radius());
        if (closed) {
            page.circle(ink, 1.2f, at, middle, radius());
            page.circle(ink, 0.6f, at, middle, radius() - 2);
        } else {
            page.dashedCircle(ink, 0.9f, at, middle, radius());
        }
        page.textCentre(
                Typeface.BOLD,
                8.5f,
                ink,
                at,
                middle + 0.8f,
                18,
                String.valueOf(ring.day().getDayOfMonth()));
        page.textCentre(
                Typeface.BOLD,
                6,
                ink,
                at,
                middle + 6.6f,
                17,
                days.month(ring.day().getMonth()));
        if (ring.standing() == Standing.MOVING) {
            page.line(ink, 1, at - radius(), middle + radius(), at + radius(), middle - radius());
        }
    }

    private void knot(BandGeometry.Knot knot) {
        float at = x(knot.x());
        if (knot.standing() == Standing.CLOSED) {
            page.disc(Ink.STAMP, at, y(knot.y()), 3.4f);
        } else {
            page.disc(Ink.WHITE, at, y(knot.y()), 3.2f);
            page.circle(Ink.INK, 1, at, y(knot.y()), 3.2f);
        }
    }

    private void household(BandGeometry.HouseholdLine line) {
        float at = y(line.y());
        name(line.name(), at, Typeface.REGULAR);
        page.line(Ink.RULE, 0.6f, left, at, left + PLOT, at);
        for (BandGeometry.HouseholdMark mark : line.marks()) {
            float x = x(mark.x());
            switch (mark.done()) {
                case DONE -> page.line(Ink.STAMP, 1.8f, x, at, x, at - 8);
                case TO_COME -> page.line(Ink.INK, 0.75f, x, at, x, at - 4.5f);
                case NOT_DONE -> {
                    page.line(Ink.RED, 1.1f, x - 2.5f, at - 6.5f, x + 2.5f, at - 1.5f);
                    page.line(Ink.RED, 1.1f, x - 2.5f, at - 1.5f, x + 2.5f, at - 6.5f);
                }
            }
        }
    }

    private void name(String name, float at, Typeface face) {
        String fits = Flow.clip(name, face, Type.SMALL, NAMES - 8);
        page.textRight(face, Type.SMALL, Ink.INK, left - 7, at + 3, NAMES, fits);
    }

    private void today(BandGeometry.Thread thread) {
        float at = x(thread.x());
        float head = y(band.stripTop()) - 6;
        page.line(Ink.RED, 1.35f, at, head, at, y(band.height()) - 2);
        page.circle(Ink.RED, 1.1f, at, head - 2.4f, 2.4f);
        String label = words.today(thread.day());
        if (thread.labelLeft()) {
            page.textRight(Typeface.BOLD, 8.25f, Ink.INK, at - 5, head + 1.5f, 120, label);
        } else {
            page.text(Typeface.BOLD, 8.25f, Ink.INK, at + 5, head + 1.5f, label);
        }
    }

    private static float radius() {
        return (float) SHAPE.ring() * POINT;
    }

    private float x(double fraction) {
        return left + PLOT * (float) fraction;
    }

    private float y(double units) {
        return top + (float) units * POINT;
    }
}
