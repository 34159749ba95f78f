package changeover.scheduling.supply;

import java.math.BigDecimal;
import java.util.Arrays;

/** So much in the middle of the years that may come, and between which figures eight of ten lie. */
public record Range(BigDecimal low, BigDecimal middle, BigDecimal high) {

    /** Of so many thousandths in each year, in any order. */
    static Range of(long[] years) {
        long[] sorted = years.clone();
        Arrays.sort(sorted);
        return new Range(at(sorted, 0.1), at(sorted, 0.5), at(sorted, 0.9));
    }

    private static BigDecimal at(long[] sorted, double share) {
        int index = (int) Math.clamp(Math.ceil(share * sorted.length) - 1, 0, sorted.length - 1);
        BigDecimal quantity = BigDecimal.valueOf(sorted[index], 3).stripTrailingZeros();
        return quantity.scale() < 0 ? quantity.setScale(0) : quantity;
    }

    public boolean isNothing() {
        return high.signum() == 0;
    }
}
