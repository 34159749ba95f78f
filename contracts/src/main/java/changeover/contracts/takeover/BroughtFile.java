package changeover.contracts.takeover;

import changeover.contracts.words.Folded;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A file that was recognised as one of the lists: its rows, each cell under the name of its column. */
public record BroughtFile(byte[] bytes, List<Row> rows) {

    public BroughtFile {
        rows = List.copyOf(rows);
    }

    /**
     * One row.
     *
     * @param number as a spreadsheet counts
     */
    public record Row(int number, Map<String, String> cells) {

        public Row {
            cells = Map.copyOf(cells);
        }

        /** Empty where the file has no such column. */
        public String cell(String title) {
            return cells.getOrDefault(title, "");
        }

        /** @param titles of the file, in the order of the cells */
        public static Row of(int number, List<String> titles, List<String> cells, List<Title> known) {
            Map<String, String> named = new HashMap<>();
            for (int at = 0; at < titles.size(); at++) {
                String folded = Folded.of(titles.get(at));
                String cell = cells.get(at);
                known.stream()
                        .filter(title -> title.isCalled(folded))
                        .findFirst()
                        .ifPresent(title -> named.putIfAbsent(title.en(), cell));
            }
            return new Row(number, named);
        }
    }
}
