package changeover.contracts.oldsheet;

import changeover.contracts.words.Checks;
import changeover.contracts.words.FormulaGuard;
import changeover.contracts.words.Refusal;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * An old spreadsheet as it stands: its titles, each told apart from the others, and the rows under them. Commas,
 * semicolons and tabs are understood, and lines above the titles are left out.
 *
 * @param titleRow as a spreadsheet counts
 */
public record SheetTable(int titleRow, List<String> titles, List<Row> rows) {

    /** The most rows of one file. */
    static final int MOST_ROWS = 20_000;

    /** The most columns of one file. */
    public static final int MOST_COLUMNS = 80;

    private static final int LOOKED_AT = 20;
    private static final int LONGEST_TITLE = 60;
    private static final int LONGEST_CELL = Checks.NOTE;

    /**
     * One row.
     *
     * @param number as a spreadsheet counts
     * @param cells one for each title, without blanks around them
     */
    public record Row(int number, List<String> cells) {

        public Row {
            cells = List.copyOf(cells);
        }

        boolean isBlank() {
            return cells.stream().allMatch(String::isEmpty);
        }
    }

    public SheetTable {
        titles = List.copyOf(titles);
        rows = List.copyOf(rows);
    }

    /** @throws changeover.contracts.words.Refused when it is no table */
    public static SheetTable of(byte[] file) {
        String text = SheetText.of(file);
        List<List<String>> records = records(text, separator(text));
        int wide = records.stream().mapToInt(SheetTable::filled).max().orElse(0);
        if (wide < 2) {
            throw Refusal.of("oldsheet.no-table").at("file").thrown();
        }
        int head = 0;
        while (filled(records.get(head)) * 2 < wide) {
            head++;
        }
        int width = records.stream().mapToInt(List::size).max().orElse(0);
        if (width > MOST_COLUMNS) {
            throw Refusal.of("oldsheet.too-wide", Map.of("most", MOST_COLUMNS))
                    .at("file")
                    .thrown();
        }
        List<String> titles = titles(records.get(head), width);
        List<Row> rows = new ArrayList<>();
        for (int at = head + 1; at < records.size(); at++) {
            var row = new Row(at + 1, padded(records.get(at), width));
            if (!row.isBlank()) {
                rows.add(row);
            }
        }
        return new SheetTable(head + 1, titles, rows);
    }

    /** What stands most often between the cells of the first lines. */
    private static char separator(String text) {
        String some = text.lines().limit(LOOKED_AT).reduce("", (a, b) -> a + "\n" + b);
        char best = ',';
        for (char one : ";\t".toCharArray()) {
            if (count(some, one) > count(some, best)) {
                best = one;
            }
        }
        return best;
    }

    private static long count(String text, char one) {
        return text.chars().filter(letter -> letter == one).count();
    }

    private static List<List<String>> records(String text, char separator) {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setDelimiter(separator)
                .setIgnoreEmptyLines(false)
                .setTrailingData(true)
                .get();
        var records = new ArrayList<List<String>>();
        try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
            for (CSVRecord record : parser) {
                if (records.size() > MOST_ROWS + LOOKED_AT) {
                    throw Refusal.of("oldsheet.too-many-rows", Map.of("most", MOST_ROWS))
                            .at("file")
                            .thrown();
                }
                records.add(record.stream().map(SheetTable::cell).toList());
            }
            return records;
        } catch (IOException | IllegalStateException | UncheckedIOException notATable) {
            throw Refusal.of("oldsheet.no-table").at("file").thrown();
        }
    }

    /** Blanks of every sort together and none around, nothing that cannot be printed. */
    private static String cell(String said) {
        String line = FormulaGuard.in(said)
                .replaceAll("[\\s\\p{Cntrl}\\p{Cf}\\p{Cs}\\p{Z}\uFFFE\uFFFF]+", " ")
                .strip();
        return line.length() <= LONGEST_CELL
                ? line
                : line.substring(0, LONGEST_CELL).strip();
    }

    private static int filled(List<String> cells) {
        return (int) cells.stream().filter(cell -> !cell.isEmpty()).count();
    }

    private static List<String> titles(List<String> said, int width) {
        Set<String> known = new HashSet<>();
        List<String> titles = new ArrayList<>();
        for (int at = 0; at < width; at++) {
            String cell = at < said.size() ? said.get(at) : "";
            String title = cell.length() <= LONGEST_TITLE
                    ? cell
                    : cell.substring(0, LONGEST_TITLE).strip();
            String words = title.isEmpty() ? String.valueOf(at + 1) : title;
            String told = words;
            for (int nth = 2; !known.add(told); nth++) {
                told = words + " " + nth;
            }
            titles.add(told);
        }
        return titles;
    }

    private static List<String> padded(List<String> cells, int width) {
        List<String> padded = new ArrayList<>(cells);
        while (padded.size() < width) {
            padded.add("");
        }
        return padded;
    }
}
