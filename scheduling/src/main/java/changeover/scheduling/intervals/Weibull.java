package changeover.scheduling.intervals;

import org.apache.commons.numbers.gamma.Gamma;

/**
 * How long a filter lasts: by the characteristic life ({@code scaleDays}) 63 of 100 have turned grey; the larger the
 * shape, the more alike their lives are (1: no pattern, 5: most within a quarter of the middle).
 *
 * @param shape above nought
 * @param scaleDays above nought
 */
public record Weibull(double shape, double scaleDays) {

    public Weibull {
        if (!(shape > 0 && scaleDays > 0) || Double.isInfinite(shape) || Double.isInfinite(scaleDays)) {
            throw new IllegalArgumentException("shape " + shape + ", scale " + scaleDays);
        }
    }

    /** The chance, 0 to 1, that it is grey after that many days. */
    public double greyBy(double days) {
        return days <= 0 ? 0 : -Math.expm1(-Math.exp(shape * (Math.log(days) - Math.log(scaleDays))));
    }

    /** The mean life; infinite only for shapes near nought. */
    public double meanDays() {
        return scaleDays * Gamma.value(1 + 1 / shape);
    }
}
