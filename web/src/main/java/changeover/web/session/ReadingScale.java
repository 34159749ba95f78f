package changeover.web.session;

import changeover.billing.documents.band.DayWords;
import changeover.billing.documents.band.ScaleGeometry;
import java.math.BigDecimal;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** A reading is seen against what is expected: the band a block, the reading a triangle above the scale. */
public final class ReadingScale {

    private static final double AXIS = 34;

    private ReadingScale() {}

    /**
     * The scale, stretching to its place.
     *
     * @param id unique on the page
     * @param title what is read, with its unit
     */
    public static String svg(
            String id,
            String title,
            @Nullable BigDecimal low,
            @Nullable BigDecimal high,
            @Nullable BigDecimal reading,
            Locale locale) {
        ScaleGeometry scale = ScaleGeometry.of(low, high, reading);
        String expected = expected(low, high, locale);
        String words = reading == null ? expected : figure(reading, locale) + "; " + expected;
        Drawing svg = Drawing.stretching("reading-scale", id, title, words, AXIS + 26);
        svg.box("fi", clip(scale.bandFrom()), AXIS - 13, clip(scale.bandUntil()), 13);
        svg.line("i", 0, AXIS, 1, AXIS);
        for (ScaleGeometry.Tick tick : scale.ticks()) {
            boolean large = tick.figure() != null;
            svg.line("n", tick.x(), AXIS, tick.x(), AXIS + (large ? 8 : 4));
            if (tick.figure() != null) {
                svg.text("q", anchor(tick.x()), tick.x(), 0, AXIS + 22, figure(tick.figure(), locale));
            }
        }
        Double at = scale.reading();
        double middle = (clip(scale.bandFrom()) + clip(scale.bandUntil())) / 2;
        boolean close = at != null && Math.abs(at - middle) < 0.28;
        svg.text("b", anchor(middle), middle, 0, AXIS - 18, close ? "" : expected);
        if (at != null && reading != null) {
            boolean off = scale.outside();
            String fill = off ? "fr" : "fs";
            svg.at(at, AXIS - 1, "<path class=\"" + fill + " edge\" d=\"M0 0l-7.5-12h15z\"/>");
            svg.text((off ? "r" : "v") + " halo", anchor(at), at, 0, AXIS - 18, figure(reading, locale));
        }
        return svg.done();
    }

    /** "18.8 to 22.9", "60 or less", "at least 4". */
    public static String expected(@Nullable BigDecimal low, @Nullable BigDecimal high, Locale locale) {
        boolean french = DayWords.of(locale).french();
        if (low != null && high != null) {
            return figure(low, locale) + (french ? " à " : " to ") + figure(high, locale);
        }
        if (high != null) {
            return figure(high, locale) + (french ? " ou moins" : " or less");
        }
        return low == null ? "" : figure(low, locale) + (french ? " ou plus" : " or more");
    }

    /** A figure as it is written: decimal comma in French. */
    public static String figure(BigDecimal figure, Locale locale) {
        String plain = figure.toPlainString().replace('-', '\u2212');
        return DayWords.of(locale).french() ? plain.replace('.', ',') : plain;
    }

    private static String anchor(double x) {
        return x < 0.04 ? "start" : x > 0.96 ? "end" : "middle";
    }

    private static double clip(double x) {
        return Math.min(1, Math.max(0, x));
    }
}
