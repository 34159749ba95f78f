package changeover.contracts.homesfile;

import changeover.contracts.words.FormulaGuard;
import changeover.contracts.words.Refusal;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;

/**
 * The table as bytes: UTF-8, RFC 4180. Out: commas, CRLF, no byte order mark, fixed order. In: a byte order mark,
 * semicolons and plain line ends are understood too.
 */
final class HomesCsv {

    /** The largest file taken, in bytes. */
    static final int LARGEST = 20_000_000;

    /** The most rows taken at once. */
    static final int MOST_ROWS = 100_000;

    private HomesCsv() {}

    /** @throws changeover.contracts.words.Refused when the file as a whole cannot be read */
    static List<Line> read(byte[] file) {
        if (file.length > LARGEST) {
            throw Refusal.of("homesfile.too-large", Map.of("most", LARGEST / 1_000_000))
                    .thrown();
        }
        String text = text(file);
        try (CSVParser table = format(text).parse(new StringReader(text))) {
            List<CSVRecord> records = records(table);
            Map<Column, Integer> places = places(records.getFirst());
            var lines = new ArrayList<Line>();
            for (CSVRecord record : records.subList(1, records.size())) {
                lines.add(line(record, places));
            }
            return lines;
        } catch (IOException | UncheckedIOException | IllegalStateException notATable) {
            throw Refusal.of("homesfile.not-a-table").thrown();
        }
    }

    static byte[] write(List<Line> lines) {
        var text = new StringBuilder();
        try (var table = new CSVPrinter(text, CSVFormat.RFC4180)) {
            for (Column column : Column.values()) {
                table.print(column.title());
            }
            table.println();
            for (Line line : lines) {
                for (Column column : Column.values()) {
                    String cell = line.cell(column);
                    table.print(column.isGuarded() ? FormulaGuard.out(cell) : cell);
                }
                table.println();
            }
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static String text(byte[] file) {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(file))
                    .toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException notUtf8) {
            throw Refusal.of("homesfile.not-utf8").thrown();
        }
    }

    private static CSVFormat format(String text) {
        String titles = text.lines().findFirst().orElse("");
        long semicolons = titles.chars().filter(c -> c == ';').count();
        long commas = titles.chars().filter(c -> c == ',').count();
        return CSVFormat.RFC4180
                .builder()
                .setDelimiter(semicolons > commas ? ';' : ',')
                .setIgnoreEmptyLines(true)
                .get();
    }

    private static List<CSVRecord> records(CSVParser table) {
        var records = new ArrayList<CSVRecord>();
        for (CSVRecord record : table) {
            records.add(record);
            if (records.size() > MOST_ROWS + 1) {
                throw Refusal.of("homesfile.too-many-rows", Map.of("most", MOST_ROWS))
                        .thrown();
            }
        }
        if (records.isEmpty()) {
            throw Refusal.of("homesfile.empty").thrown();
        }
        return records;
    }

    /** Where each column stands; the order is free, an unknown or a missing title is not. */
    private static Map<Column, Integer> places(CSVRecord titles) {
        Map<Column, Integer> places = new EnumMap<>(Column.class);
        for (int place = 0; place < titles.size(); place++) {
            String title = titles.get(place).strip().toLowerCase(Locale.ROOT);
            Column column = column(title);
            if (places.put(column, place) != null) {
                throw Refusal.of("homesfile.title-twice", Map.of("title", title))
                        .thrown();
            }
        }
        for (Column column : Column.values()) {
            if (column.mustBeThere() && !places.containsKey(column)) {
                throw Refusal.of("homesfile.title-missing", Map.of("title", column.title()))
                        .thrown();
            }
        }
        return places;
    }

    private static Column column(String title) {
        for (Column column : Column.values()) {
            if (column.title().equals(title)) {
                return column;
            }
        }
        String said = title.length() > 40 ? title.substring(0, 40) : title;
        throw Refusal.of("homesfile.title-unknown", Map.of("title", said)).thrown();
    }

    private static Line line(CSVRecord record, Map<Column, Integer> places) {
        Map<Column, String> cells = new EnumMap<>(Column.class);
        places.forEach((column, place) -> {
            String cell = place < record.size() ? record.get(place) : "";
            cells.put(column, column.isGuarded() ? FormulaGuard.in(cell) : cell);
        });
        return new Line((int) record.getRecordNumber(), cells);
    }
}
