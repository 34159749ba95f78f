package changeover.billing.bank;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A first reading of a table that nobody has mapped yet, for a person to correct: the column in which the last rows have days,
 * those that hold amounts, and words for the rest.
 */
public final class ColumnsGuess {

    private static final int LOOKED_AT = 12;
    private static final String SEPARATORS = ",;\t|";

    private ColumnsGuess() {}

    /** Empty when no column holds days, or none amounts. */
    public static Optional<Columns> of(byte[] file) {
        String text = BankText.of(file);
        char separator = separator(text);
        List<List<String>> rows = BankTable.rows(file, separator, LOOKED_AT);
        for (DayStyle style : DayStyle.values()) {
            for (int column = 1; column <= width(rows); column++) {
                int head = head(rows, column, style);
                if (head < rows.size()) {
                    return columns(separator, head, column, style, rows.subList(head, rows.size()));
                }
            }
        }
        return Optional.empty();
    }

    private static char separator(String text) {
        String some = text.lines().limit(LOOKED_AT).reduce("", (a, b) -> a + "\n" + b);
        char best = ',';
        for (char one : SEPARATORS.toCharArray()) {
            if (count(some, one) > count(some, best)) {
                best = one;
            }
        }
        return best;
    }

    private static long count(String text, char one) {
        return text.chars().filter(letter -> letter == one).count();
    }

    private static int width(List<List<String>> rows) {
        return rows.stream().mapToInt(List::size).max().orElse(0);
    }

    /** Rows before the first day, when all after it have days in that column. */
    private static int head(List<List<String>> rows, int column, DayStyle style) {
        int head = 0;
        while (head < rows.size() && style.read(cell(rows.get(head), column)).isEmpty()) {
            head++;
        }
        boolean all = rows.subList(head, rows.size()).stream()
                .allMatch(row -> style.read(cell(row, column)).isPresent());
        return all ? head : rows.size();
    }

    private static Optional<Columns> columns(
            char separator, int head, int dayColumn, DayStyle style, List<List<String>> lines) {
        List<Integer> amounts = new ArrayList<>();
        List<Integer> words = new ArrayList<>();
        boolean comma = lines.stream()
                .flatMap(List::stream)
                .anyMatch(cell -> cell.matches("[-+(]?[\\d\\s\u00a0.]*\\d,\\d{2}\\)?-?"));
        for (int column = 1; column <= width(lines); column++) {
            int at = column;
            boolean money = lines.stream().allMatch(line -> amount(cell(line, at), comma) != null)
                    && lines.stream().anyMatch(line -> cell(line, at).matches(".*\\d[.,]\\d{2}\\D*"));
            if (money) {
                amounts.add(column);
            } else if (column != dayColumn
                    && lines.stream().anyMatch(line -> cell(line, at).matches(".*\\p{L}.*"))) {
                words.add(column);
            }
        }
        if (amounts.isEmpty()) {
            return Optional.empty();
        }
        int first = amounts.getFirst();
        boolean signed = amounts.size() == 1
                || lines.stream().anyMatch(line -> cell(line, first).contains("-"))
                || lines.stream().noneMatch(line -> cell(line, first).isBlank());
        return Optional.of(new Columns(
                separator,
                head,
                dayColumn,
                style,
                signed ? first : amounts.get(1),
                signed ? null : Integer.valueOf(first),
                comma,
                words.isEmpty() ? List.of(dayColumn) : words,
                null,
                null));
    }

    private static @Nullable BigDecimal amount(String cell, boolean comma) {
        return BankAmount.read(cell, comma).orElse(null);
    }

    private static String cell(List<String> row, int column) {
        return column <= row.size() ? row.get(column - 1) : "";
    }
}
