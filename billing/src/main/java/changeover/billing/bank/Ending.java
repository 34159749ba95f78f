package changeover.billing.bank;

import java.math.BigDecimal;

/**
 * Whether a table stops in the middle of its last row: no end of line after it, and fewer cells than every other row, or, where
 * the amount ends the row, fewer decimals of it than all others have.
 */
final class Ending {

    private static final int MIXED = -1;

    private int rows;
    private int fewestCells = Integer.MAX_VALUE;
    private int decimals;
    private int lastCells;
    private int lastDecimals;
    private boolean lastEndsSo;

    /**
     * The next row, after which the one before is no longer the last.
     *
     * @param endsSo nothing stands behind its amount
     */
    void next(int cells, BigDecimal amount, boolean endsSo) {
        if (rows > 0) {
            fewestCells = Math.min(fewestCells, lastCells);
            decimals = rows == 1 || decimals == lastDecimals ? lastDecimals : MIXED;
        }
        rows++;
        lastCells = cells;
        lastDecimals = amount.scale();
        lastEndsSo = endsSo;
    }

    boolean isCut(String text) {
        boolean ends = text.endsWith("\n") || text.endsWith("\r");
        return !ends
                && rows > 2
                && (lastCells < fewestCells || lastEndsSo && decimals != MIXED && lastDecimals < decimals);
    }
}
