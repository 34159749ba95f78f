package changeover.contracts.words;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.jspecify.annotations.Nullable;

/**
 * A table to be opened elsewhere: UTF-8, RFC 4180, a title on each column. A text that a spreadsheet would run as a formula
 * is guarded; numbers and days are written as they are.
 */
public final class CsvTable {

    private final StringBuilder text = new StringBuilder();
    private final CSVPrinter table;

    public CsvTable(String... titles) {
        try {
            table = new CSVPrinter(text, CSVFormat.RFC4180);
            table.printRecord((Object[]) titles);
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
    }

    /** @param cells texts, numbers, days; nothing is an empty cell */
    public CsvTable row(@Nullable Object... cells) {
        try {
            for (Object cell : cells) {
                table.print(
                        switch (cell) {
                            case null -> "";
                            case String words -> FormulaGuard.out(words);
                            case BigDecimal number -> number.toPlainString();
                            default -> cell.toString();
                        });
            }
            table.println();
            return this;
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
    }

    public byte[] bytes() {
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }
}
