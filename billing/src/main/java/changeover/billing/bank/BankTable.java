package changeover.billing.bank;

import changeover.contracts.digests.Sha256;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;

/**
 * Reads a bank's table by its columns. A line is known again by what it says and by how many like it stood before it on its
 * day, so that two payments alike are two and the same one in two files is one.
 */
public final class BankTable {

    private static final int MOST_ROWS = 50_000;
    private static final int MOST_WORDS = 500;
    private static final int MOST_REFERENCE = 140;

    private BankTable() {}

    /** The first rows as they stand, to be looked at. */
    public static List<List<String>> rows(byte[] file, char separator, int most) {
        return records(BankText.of(file), separator).stream()
                .limit(most)
                .map(CSVRecord::toList)
                .toList();
    }

    /**
     * @param inCurrency ISO 4217: a row whose amount says another one is refused, and one that its coins do not make up
     * @throws Refused for a row that cannot be read by the columns, named by its number
     */
    public static List<ReadLine> read(byte[] file, Columns columns, String inCurrency) {
        List<ReadLine> lines = new ArrayList<>();
        Map<String, Integer> alike = new HashMap<>();
        Ending ending = new Ending();
        int number = 0;
        for (CSVRecord row : records(BankText.of(file), columns.separator())) {
            number++;
            boolean blank = row.stream().allMatch(String::isBlank);
            if (number > columns.headRows() && !blank) {
                inOurs(row, columns, number, inCurrency);
                ReadLine line = line(row, columns, number, alike);
                inBounds(line.amount(), number, inCurrency);
                ending.next(row.size(), line.amount(), endsWithAmount(row, columns));
                if (line.amount().signum() != 0) {
                    lines.add(line);
                }
            }
        }
        if (ending.isCut(BankText.of(file))) {
            throw Refusal.of("bank.table-cut", Map.of("row", number)).at("file").thrown();
        }
        return List.copyOf(lines);
    }

    private static boolean endsWithAmount(CSVRecord row, Columns columns) {
        @Nullable Integer out = columns.outColumn();
        return row.size() <= Math.max(columns.amountColumn(), out == null ? 0 : out);
    }

    private static void inOurs(CSVRecord row, Columns columns, int number, String ours) {
        @Nullable Integer column = columns.outColumn();
        BankAmount.foreign(cell(row, columns.amountColumn()), ours)
                .or(() -> column == null ? Optional.empty() : BankAmount.foreign(cell(row, column), ours))
                .ifPresent(said -> {
                    throw Refusal.of("bank.row-currency", Map.of("row", number, "said", said, "ours", ours))
                            .at("file")
                            .thrown();
                });
    }

    private static void inBounds(BigDecimal amount, int number, String currency) {
        if (BankAmount.isInParts(amount, currency)) {
            throw Refusal.of("bank.row-cents", Map.of("row", number)).at("file").thrown();
        }
        if (BankAmount.isTooMuch(amount)) {
            throw Refusal.of("bank.row-too-much", Map.of("row", number))
                    .at("file")
                    .thrown();
        }
    }

    private static ReadLine line(CSVRecord row, Columns columns, int number, Map<String, Integer> alike) {
        Optional<LocalDate> day = columns.dayStyle().read(cell(row, columns.dayColumn()));
        Optional<BigDecimal> amount = amount(row, columns);
        if (day.isEmpty() || amount.isEmpty()) {
            throw Refusal.of(day.isEmpty() ? "bank.row-day" : "bank.row-amount", Map.of("row", number))
                    .at("file")
                    .thrown();
        }
        String words = BankText.words(
                columns.wordsColumns().stream().map(column -> cell(row, column)).collect(Collectors.joining(" ")),
                MOST_WORDS);
        @Nullable Integer at = columns.referenceColumn();
        String reference = at == null ? "" : BankText.words(cell(row, at), MOST_REFERENCE);
        String said = String.join(
                "\u001f",
                day.get().toString(),
                amount.get().stripTrailingZeros().toPlainString(),
                words,
                reference);
        @Nullable Integer kind = columns.kindColumn();
        int ordinal = alike.merge(said, 1, Integer::sum);
        return new ReadLine(
                "csv:" + Sha256.hex(said + "\u001f" + ordinal).substring(0, 40),
                day.get(),
                amount.get(),
                words,
                reference.isEmpty() ? null : reference,
                kind == null ? null : WayOfLine.words(cell(row, kind)).orElse(null));
    }

    private static Optional<BigDecimal> amount(CSVRecord row, Columns columns) {
        @Nullable Integer column = columns.outColumn();
        if (row.size() < columns.amountColumn() && (column == null || row.size() < column)) {
            return Optional.empty();
        }
        Optional<BigDecimal> in = BankAmount.read(cell(row, columns.amountColumn()), columns.decimalComma());
        if (column == null) {
            return in;
        }
        Optional<BigDecimal> out = BankAmount.read(cell(row, column), columns.decimalComma());
        return in.flatMap(came -> out.map(went -> came.subtract(went.abs())));
    }

    private static String cell(CSVRecord row, int column) {
        return column <= row.size() ? row.get(column - 1) : "";
    }

    private static List<CSVRecord> records(String text, char separator) {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setDelimiter(separator)
                .setTrim(true)
                .setTrailingData(true)
                .get();
        List<CSVRecord> rows = new ArrayList<>();
        try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
            for (CSVRecord row : parser) {
                if (rows.size() == MOST_ROWS) {
                    throw Refusal.of("bank.too-large").at("file").thrown();
                }
                rows.add(row);
            }
            return rows;
        } catch (IOException | IllegalStateException | UncheckedIOException notATable) {
            throw Refusal.of("bank.no-table").at("file").thrown();
        }
    }
}
