package changeover.billing.bank;

import java.math.BigDecimal;

/**
 * Whether a table stops in the middle of its last row: no end of line after it, and fewer cells than every other row, or fewer
 * decimals of the amount where all others have the same.
 */
final class Ending {

    private static final int MIXED = -1;

    private int rows;
    private int fewestCells = Integer.MAX_VALUE;
    private int decimals;
    private int lastCells;
    private int lastDecimals;

    /** The next row, after which the one before is no longer the last. */
    void next(int cells, BigDecimal amount) {
        if (rows > 0) {
            fewestCells = Math.min(fewestCells, lastCells);
            decimals = rows == 1 || decimals == lastDecimals ? lastDecimals : MIXED;
        }
        rows++;
        lastCells = cells;
        lastDecimals = amount.scale();
    }

    boolean isCut(String text) {
        boolean ends = text.endsWith("\n") || text.endsWith("\r");
        return !ends && rows > 2 && (lastCells < fewestCells || decimals != MIXED && lastDecimals < decimals);
    }
}
