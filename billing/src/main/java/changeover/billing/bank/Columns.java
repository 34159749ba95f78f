package changeover.billing.bank;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Which column of a bank's table says what; columns count from one.
 *
 * @param headRows rows before the first line
 * @param amountColumn what came in, or both with a sign when there is no {@code outColumn}
 * @param outColumn what went out, written without a sign
 * @param kindColumn how the money came, in the bank's words
 */
public record Columns(
        char separator,
        int headRows,
        int dayColumn,
        DayStyle dayStyle,
        int amountColumn,
        @Nullable Integer outColumn,
        boolean decimalComma,
        List<Integer> wordsColumns,
        @Nullable Integer referenceColumn,
        @Nullable Integer kindColumn) {

    public Columns {
        wordsColumns = List.copyOf(wordsColumns);
    }
}
