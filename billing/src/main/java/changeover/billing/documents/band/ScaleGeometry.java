package changeover.billing.documents.band;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A reading on its scale: the expected band as a block, the reading as a triangle, all in fractions of the scale's width.
 *
 * @param ticks every tick, the numbered ones with their figure
 * @param reading where the triangle stands; none when nothing was read yet
 */
public record ScaleGeometry(
        List<Tick> ticks,
        double bandFrom,
        double bandUntil,
        @Nullable Double reading,
        boolean outside) {

    /** A tick of the scale; {@code figure} is null on the small ones. */
    public record Tick(double x, @Nullable BigDecimal figure) {}

    /**
     * Lays out a scale on round figures that holds the band and the reading with room to spare.
     *
     * @param low lowest expected, in, or none: everything below {@code high} is expected
     * @param high highest expected, in, or none
     */
    public static ScaleGeometry of(@Nullable BigDecimal low, @Nullable BigDecimal high, @Nullable BigDecimal reading) {
        double first = smallest(low, high, reading);
        double last = largest(low, high, reading);
        double span = last == first ? Math.max(1, Math.abs(last)) : last - first;
        boolean fromNothing = first >= 0 && (low == null || first < span * 2.5);
        double bottom = fromNothing ? 0 : first - span * 0.35;
        double top = last <= 0 && last > -span * 2.5 ? 0 : last + span * 0.2;
        double step = step((top - bottom) / 5);
        double from = Math.floor(bottom / step) * step;
        double until = Math.ceil(top / step) * step;
        double width = until - from;
        List<Tick> ticks = new ArrayList<>();
        int small = 5;
        int count = (int) Math.round(width / step) * small;
        for (int i = 0; i <= count; i++) {
            double at = from + i * step / small;
            ticks.add(new Tick((at - from) / width, i % small == 0 ? figure(at, step) : null));
        }
        return new ScaleGeometry(
                ticks,
                low == null ? 0 : (low.doubleValue() - from) / width,
                high == null ? 1 : (high.doubleValue() - from) / width,
                reading == null ? null : (reading.doubleValue() - from) / width,
                outside(low, high, reading));
    }

    /** Whether a reading lies outside what is expected. */
    public static boolean outside(@Nullable BigDecimal low, @Nullable BigDecimal high, @Nullable BigDecimal reading) {
        return reading != null
                && ((low != null && reading.compareTo(low) < 0) || (high != null && reading.compareTo(high) > 0));
    }

    private static double smallest(@Nullable BigDecimal... figures) {
        double smallest = Double.MAX_VALUE;
        for (BigDecimal figure : figures) {
            smallest = figure == null ? smallest : Math.min(smallest, figure.doubleValue());
        }
        return smallest == Double.MAX_VALUE ? 0 : smallest;
    }

    private static double largest(@Nullable BigDecimal... figures) {
        double largest = -Double.MAX_VALUE;
        for (BigDecimal figure : figures) {
            largest = figure == null ? largest : Math.max(largest, figure.doubleValue());
        }
        return largest == -Double.MAX_VALUE ? 1 : largest;
    }

    /** The nearest of 1, 2, 5 times a power of ten. */
    private static double step(double rough) {
        double power = Math.pow(10, Math.floor(Math.log10(rough)));
        double times = rough / power;
        return (times < 1.5 ? 1 : times < 3.3 ? 2 : times < 7.5 ? 5 : 10) * power;
    }

    private static BigDecimal figure(double at, double step) {
        int places = Math.max(0, (int) Math.ceil(-Math.log10(step)));
        return BigDecimal.valueOf(at).setScale(places, RoundingMode.HALF_UP);
    }
}
