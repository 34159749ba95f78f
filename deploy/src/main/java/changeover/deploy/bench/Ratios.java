package changeover.deploy.bench;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The ratios of at least seven pairs, judged by their median against what is good and what is the goal. */
final class Ratios {
    static final int PAIRS = 7;

    private final String name;
    private final BigDecimal good;
    private final BigDecimal goal;
    private final boolean lessIsBetter;
    private final List<BigDecimal> ratios = new ArrayList<>();

    private Ratios(String name, String good, String goal, boolean lessIsBetter) {
        this.name = name;
        this.good = new BigDecimal(good);
        this.goal = new BigDecimal(goal);
        this.lessIsBetter = lessIsBetter;
    }

    /** The product's time over the bare tool's: less is better. */
    static Ratios ofTimes(String name, String good, String goal) {
        return new Ratios(name, good, goal, true);
    }

    /** The product's rate over the bare tool's: more is better. */
    static Ratios ofRates(String name, String good, String goal) {
        return new Ratios(name, good, goal, false);
    }

    void add(long product, long bare) {
        ratios.add(new BigDecimal(product).divide(new BigDecimal(Math.max(1, bare)), MathContext.DECIMAL64));
    }

    /** The last line of a measure. */
    String line(long rows, boolean same) {
        BigDecimal median = median();
        return "%s ratio=%s min=%s max=%s pairs=%d rows=%d checksum=%s verdict=%s"
                .formatted(
                        name,
                        shown(median),
                        shown(Collections.min(ratios)),
                        shown(Collections.max(ratios)),
                        ratios.size(),
                        rows,
                        same ? "ok" : "FAIL",
                        same ? verdict(median) : "missed");
    }

    private BigDecimal median() {
        List<BigDecimal> sorted = ratios.stream().sorted().toList();
        return sorted.get(sorted.size() / 2);
    }

    private String verdict(BigDecimal median) {
        if (reaches(median, goal)) {
            return "goal";
        }
        return reaches(median, good) ? "good" : "missed";
    }

    private boolean reaches(BigDecimal median, BigDecimal mark) {
        return lessIsBetter ? median.compareTo(mark) <= 0 : median.compareTo(mark) >= 0;
    }

    private static String shown(BigDecimal ratio) {
        return ratio.setScale(3, RoundingMode.HALF_UP).toPlainString();
    }
}
