package changeover.billing.pricing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;

/**
 * Minutes are billed up to the next step, and a visit that no plan promised counts at least so many.
 *
 * @param step in minutes, one of {@link #STEPS}
 * @param minimum in minutes, nought where none is asked
 */
public record LabourTerms(LocalDate from, int step, int minimum) {

    /** What a business may count by: a tenth of an hour, ten minutes, a quarter, a half, a whole hour. */
    public static final List<Integer> STEPS = List.of(6, 10, 15, 30, 60);

    /** The longest minimum: eight hours. */
    public static final int LARGEST_MINIMUM = 480;

    /** What holds until the business writes its own. */
    public static final LabourTerms USUAL = new LabourTerms(LocalDate.MIN, 15, 0);

    /**
     * 20 minutes by the quarter are 0.50 hours, 61 are 1.25; by tens 61 are 70 minutes, 1.1667. A sixth of an hour is
     * written with four decimals, and the line costs what these decimals give.
     */
    BigDecimal hours(int minutes) {
        return BigDecimal.valueOf(counted(minutes)).divide(BigDecimal.valueOf(60), 4, RoundingMode.HALF_UP);
    }

    /** Up to the next step. */
    int counted(int minutes) {
        return (minutes + step - 1) / step * step;
    }
}
