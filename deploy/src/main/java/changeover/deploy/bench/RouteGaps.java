package changeover.deploy.bench;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** How far the distances found lie above those they are held against, in percent, and whether that is good enough. */
final class RouteGaps {
    private static final BigDecimal GOAL_MEAN = new BigDecimal("0.5");
    private static final BigDecimal GOAL_WORST = new BigDecimal("3");
    private static final BigDecimal GOOD_MEAN = new BigDecimal("2");
    private static final BigDecimal GOOD_WORST = new BigDecimal("8");

    private final List<BigDecimal> gaps = new ArrayList<>();

    /** The percentage by which one distance is longer than another. */
    static BigDecimal gap(long tenths, long against) {
        return BigDecimal.valueOf(100 * (tenths - against))
                .divide(BigDecimal.valueOf(Math.max(1, against)), MathContext.DECIMAL64);
    }

    void add(BigDecimal gap) {
        gaps.add(gap);
    }

    boolean isEmpty() {
        return gaps.isEmpty();
    }

    /** The last line of the measure. */
    String line(int instances, int infeasible) {
        BigDecimal mean = gaps.isEmpty()
                ? BigDecimal.ZERO
                : gaps.stream()
                        .reduce(BigDecimal.ZERO, BigDecimal::add)
                        .divide(BigDecimal.valueOf(gaps.size()), MathContext.DECIMAL64);
        BigDecimal worst = gaps.isEmpty() ? BigDecimal.ZERO : Collections.max(gaps);
        return "routes instances=%d mean_gap=%s worst_gap=%s infeasible=%d verdict=%s"
                .formatted(instances, shown(mean), shown(worst), infeasible, verdict(mean, worst, infeasible));
    }

    private String verdict(BigDecimal mean, BigDecimal worst, int infeasible) {
        if (infeasible > 0 || gaps.isEmpty()) {
            return "missed";
        }
        if (mean.compareTo(GOAL_MEAN) <= 0 && worst.compareTo(GOAL_WORST) <= 0) {
            return "goal";
        }
        return mean.compareTo(GOOD_MEAN) <= 0 && worst.compareTo(GOOD_WORST) <= 0 ? "good" : "missed";
    }

    /** Percent with two decimals. */
    static String shown(BigDecimal percent) {
        return percent.setScale(2, RoundingMode.HALF_UP).toPlainString() + "%";
    }
}
