package changeover.billing.documents;

import changeover.billing.documents.band.ScaleGeometry;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Readings against their bands: the figure, what it should be, the band as a block with the reading on it, and a word. */
final class ReadingsTable {

    private static final float READ = 250;
    private static final float EXPECTED = 262;
    private static final float SCALE = 352;
    private static final float SCALE_WIDTH = 84;
    private static final float STANDING = 450;

    private final Flow flow;
    private final Words words;
    private final Figures figures;
    private final List<ReportSheet.Reading> readings;

    ReadingsTable(Flow flow, List<ReportSheet.Reading> readings) {
        this.flow = flow;
        this.words = flow.words();
        this.figures = new Figures(words);
        this.readings = readings;
    }

    void draw() {
        if (readings.isEmpty()) {
            return;
        }
        flow.section(words.say("report.readings"), 60);
        head();
        String machine = null;
        for (ReportSheet.Reading reading : readings) {
            boolean another = reading.equipment() != null && !Objects.equals(machine, reading.equipment());
            List<String> what = Lines.wrap(Typeface.REGULAR, Type.TEXT, 178, what(reading));
            float height = what.size() * Type.TEXT_LINE + 7;
            if (flow.need(height + (another ? 20 : 0))) {
                head();
                another = reading.equipment() != null;
            }
            if (another) {
                machine(Objects.requireNonNull(reading.equipment()));
            }
            machine = reading.equipment();
            row(reading, what, height);
        }
    }

    private void head() {
        Canvas page = flow.page();
        float top = flow.y() + 2;
        float base = top + 13;
        page.line(Ink.INK, 0.9f, Flow.LEFT, top, Flow.RIGHT, top);
        page.text(Typeface.REGULAR, Type.SMALL, Ink.QUIET, Flow.LEFT, base, words.say("report.what"));
        page.textRight(Typeface.REGULAR, Type.SMALL, Ink.QUIET, Flow.LEFT + READ, base, 60, words.say("report.read"));
        page.text(Typeface.REGULAR, Type.SMALL, Ink.QUIET, Flow.LEFT + EXPECTED, base, words.say("report.expected"));
        page.text(Typeface.REGULAR, Type.SMALL, Ink.QUIET, Flow.LEFT + STANDING, base, words.say("report.standing"));
        page.line(Ink.INK, 0.9f, Flow.LEFT, top + 19, Flow.RIGHT, top + 19);
        flow.to(top + 19);
    }

    private void machine(String name) {
        flow.page()
                .text(
                        Typeface.BOLD,
                        Type.TEXT,
                        Ink.INK,
                        Flow.LEFT,
                        flow.y() + 14,
                        Flow.clip(name, Typeface.BOLD, Type.TEXT, Flow.WIDTH));
        flow.down(18);
    }

    private void row(ReportSheet.Reading reading, List<String> what, float height) {
        Canvas page = flow.page();
        float top = flow.y();
        float base = top + 13;
        flow.lines(Typeface.REGULAR, Type.TEXT, Type.TEXT_LINE, Ink.INK, Flow.LEFT, base, what);
        page.textRight(Typeface.REGULAR, Type.TEXT, Ink.INK, Flow.LEFT + READ, base, 68, reading.read());
        String expected = Letters.plain(expected(reading));
        page.text(
                Typeface.REGULAR,
                Canvas.fitting(Typeface.REGULAR, Type.TEXT, SCALE - EXPECTED - 6, expected),
                Ink.INK,
                Flow.LEFT + EXPECTED,
                base,
                expected);
        if (reading.value() != null && (reading.low() != null || reading.high() != null)) {
            scale(page, reading, Flow.LEFT + SCALE, top + 11);
        }
        standing(page, reading, base);
        page.line(Ink.RULE, 0.7f, Flow.LEFT, top + height, Flow.RIGHT, top + height);
        flow.to(top + height);
    }

    private void standing(Canvas page, ReportSheet.Reading reading, float base) {
        ReportSheet.Standing standing = reading.standing();
        if (standing == ReportSheet.Standing.NO_BAND) {
            return;
        }
        boolean good = standing == ReportSheet.Standing.GOOD;
        String said = words.say("standing." + standing);
        if (reading.finding() != null) {
            said = words.say("standing.see", Map.of("standing", said, "number", reading.finding()));
        }
        Typeface face = good ? Typeface.REGULAR : Typeface.BOLD;
        String plain = Letters.plain(said);
        page.text(
                face,
                Canvas.fitting(face, Type.TEXT, Flow.WIDTH - STANDING, plain),
                good ? Ink.INK : Ink.RED,
                Flow.LEFT + STANDING,
                base,
                plain);
    }

    private static void scale(Canvas page, ReportSheet.Reading reading, float x, float middle) {
        ScaleGeometry scale = ScaleGeometry.of(reading.low(), reading.high(), reading.value());
        float from = x + SCALE_WIDTH * (float) scale.bandFrom();
        float until = x + SCALE_WIDTH * (float) scale.bandUntil();
        page.line(Ink.INK, 0.7f, x, middle, x + SCALE_WIDTH, middle);
        page.block(Ink.BAND, from, middle - 2.5f, until - from, 5);
        page.box(Ink.INK, 0.7f, from, middle - 2.5f, until - from, 5);
        Double at = scale.reading();
        if (at != null) {
            float tip = x + SCALE_WIDTH * Math.clamp(at.floatValue(), 0f, 1f);
            Ink ink = scale.outside() ? Ink.RED : Ink.INK;
            page.shape(ink, tip - 3.2f, middle - 7.5f, tip + 3.2f, middle - 7.5f, tip, middle - 2f);
        }
    }

    private static String what(ReportSheet.Reading reading) {
        return reading.state() == null || reading.state().isBlank()
                ? reading.what()
                : reading.what() + ", " + reading.state();
    }

    private String expected(ReportSheet.Reading reading) {
        BigDecimal low = reading.low();
        BigDecimal high = reading.high();
        String unit = reading.unit() == null ? "" : "\u00a0" + reading.unit();
        if (low != null && high != null) {
            return words.say("band.between", Map.of("low", figures.number(low), "high", figures.number(high) + unit));
        }
        if (high != null) {
            return words.say("band.at-most", "high", figures.number(high) + unit);
        }
        return low == null ? "" : words.say("band.at-least", "low", figures.number(low) + unit);
    }
}
