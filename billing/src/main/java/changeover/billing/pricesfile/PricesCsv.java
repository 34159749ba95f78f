package changeover.billing.pricesfile;

import changeover.contracts.words.FormulaGuard;
import changeover.contracts.words.Refusal;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** The bytes of a price file as rows: UTF-8, commas or semicolons, with or without a byte order mark. */
final class PricesCsv {

    /** The largest file taken, in bytes. */
    static final int LARGEST = 2_000_000;

    /** The most rows taken at once. */
    static final int MOST_ROWS = 20_000;

    private PricesCsv() {}

    /** @throws changeover.contracts.words.Refused when the file as a whole cannot be read */
    static List<PriceLine> read(byte[] file) {
        if (file.length > LARGEST) {
            throw Refusal.of("pricesfile.too-large", Map.of("most", LARGEST / 1_000_000))
                    .thrown();
        }
        String text = text(file);
        try (CSVParser table = format(text).parse(new StringReader(text))) {
            List<CSVRecord> records = table.getRecords();
            if (records.isEmpty()) {
                throw Refusal.of("pricesfile.empty").thrown();
            }
            if (records.size() > MOST_ROWS + 1) {
                throw Refusal.of("pricesfile.too-many-rows", Map.of("most", MOST_ROWS))
                        .thrown();
            }
            Map<Column, Integer> places = places(records.getFirst());
            var lines = new ArrayList<PriceLine>();
            for (CSVRecord record : records.subList(1, records.size())) {
                lines.add(line(record, places));
            }
            return lines;
        } catch (IOException | UncheckedIOException | IllegalStateException notATable) {
            throw Refusal.of("pricesfile.not-a-table").thrown();
        }
    }

    private static String text(byte[] file) {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(file))
                    .toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException notUtf8) {
            throw Refusal.of("pricesfile.not-utf8").thrown();
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

    /** Where each column stands; the order is free, an unknown or a missing title is not. */
    private static Map<Column, Integer> places(CSVRecord titles) {
        Map<Column, Integer> places = new EnumMap<>(Column.class);
        for (int place = 0; place < titles.size(); place++) {
            String title = titles.get(place).strip().toLowerCase(Locale.ROOT);
            if (places.put(column(title), place) != null) {
                throw Refusal.of("pricesfile.title-twice", Map.of("title", title))
                        .thrown();
            }
        }
        for (Column needed : List.of(Column.ITEM, Column.PRICE)) {
            if (!places.containsKey(needed)) {
                throw Refusal.of("pricesfile.title-missing", Map.of("title", needed.title()))
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
        throw Refusal.of("pricesfile.title-unknown", Map.of("title", said)).thrown();
    }

    private static PriceLine line(CSVRecord record, Map<Column, Integer> places) {
        Map<Column, String> cells = new EnumMap<>(Column.class);
        places.forEach(
                (column, place) -> cells.put(column, FormulaGuard.in(place < record.size() ? record.get(place) : "")));
        return new PriceLine((int) record.getRecordNumber(), cells);
    }
}
