package changeover.contracts.takeover;

import changeover.contracts.calendar.DayInWords;
import changeover.contracts.words.Folded;
import changeover.contracts.words.OurAge;
import changeover.contracts.words.Refusal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
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

        /**
         * The day in a cell, as only one day is written.
         *
         * @throws changeover.contracts.words.Refused at its column, for what is no day or one of another age
         */
        public LocalDate day(String title) {
            String said = cell(title);
            try {
                return OurAge.day(said);
            } catch (DateTimeException notADay) {
                throw Refusal.of("brought.day", Map.of("said", said)).at(title).thrown();
            }
        }

        /** @throws changeover.contracts.words.Refused at its column, also for a day after the take-over */
        public LocalDate dayUntil(String title, LocalDate takeOver) {
            LocalDate day = day(title);
            if (day.isAfter(takeOver)) {
                throw Refusal.of("brought.after-take-over", Map.of("day", DayInWords.of(takeOver)))
                        .at(title)
                        .thrown();
            }
            return day;
        }
    }

    /** The columns of a file by their names, looked up once for all its rows. */
    public static final class Columns {

        private final List<String> names = new ArrayList<>();

        /** @param titles of the file, in the order of its cells; of two that are called alike the first counts */
        public Columns(List<String> titles, List<Title> known) {
            for (String title : titles) {
                String folded = Folded.of(title);
                names.add(known.stream()
                        .filter(one -> one.isCalled(folded))
                        .findFirst()
                        .map(Title::en)
                        .filter(name -> !names.contains(name))
                        .orElse(""));
            }
        }

        public Row row(int number, List<String> cells) {
            Map<String, String> named = new HashMap<>();
            for (int at = 0; at < names.size(); at++) {
                if (!names.get(at).isEmpty()) {
                    named.put(names.get(at), cells.get(at));
                }
            }
            return new Row(number, named);
        }
    }
}
